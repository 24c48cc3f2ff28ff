import type { JudgedConstituent } from "@tapside/assessment";
import { useMemo } from "react";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { Screen } from "../look/screen.tsx";
import { day } from "../screens/day.ts";
import { Gone } from "../screens/gone.tsx";
import { useBook } from "../store/use-book.ts";
import { Numeral } from "../visit/numeral.tsx";
import { messages } from "../words/messages.ts";
import { Blend } from "./blend.tsx";
import { Curve } from "./curve.tsx";
import { History } from "./history.tsx";
import { NamedIndices } from "./named-indices.tsx";
import { siteWater } from "./site-water.ts";
import { useWater } from "./use-water.ts";
import { waterPageWords as words } from "./words.ts";

/** A site's water: what it is, what it does hot, whether it suits, how it changed. */
export function WaterPage({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const { book } = snapshot;
  const site = useMemo(() => siteWater(book, id), [book, id]);
  const told = useWater(site.readings);
  const kept = book.site.get(id);
  if (!kept) return <Gone />;
  const add = () => {
    const record = live.newId();
    void live.write("waterAnalysis", record, { site: id, origin: "laboratory" });
    navigate(`/analysis/${record}`);
  };
  const analyses = [...book.waterAnalysis.values()].filter((one) => one.site === id);
  const telling = told?.judged?.mostTelling;
  return (
    <Screen
      title={messages.water.title}
      subtitle={kept.name ?? words.site}
      back={{ label: words.site, to: `/site/${id}` }}
      next={{ label: words.addAnalysis, hint: words.analysisHint, onPress: add }}
    >
      <Curve readings={site.readings} told={told} appliances={site.appliances} />
      {told?.judged ? <Constituents constituents={told.judged.constituents} /> : null}
      {telling ? (
        <Band>
          <p>{messages.water.mostTelling(telling)}</p>
          <p className="note">{messages.water.modelSpread}</p>
        </Band>
      ) : null}
      {told && told.samples.length > 0 ? (
        <>
          <Band tint>
            <strong>{words.suits}</strong>
          </Band>
          {site.unsaid.map((one) => (
            <Band key={one.id} press={{ to: `/appliance/${one.id}` }}>
              <span className="name">{one.name}</span>
              <p className="note">{messages.missing({ kind: "missing", missing: one.blank })}</p>
            </Band>
          ))}
          <Blend samples={told.samples} site={site} />
          <NamedIndices samples={told.samples} />
        </>
      ) : null}
      <Band tint>
        <strong>{words.analyses}</strong>
      </Band>
      <Band press={{ to: `/site/${id}/water/in` }}>{words.fileIn}</Band>
      {analyses.map((one) => (
        <Band key={one.id} press={{ to: `/analysis/${one.id}` }}>
          <span className="row">
            <span>{one.origin === "utility" ? words.utility : words.laboratory}</span>
            <span className="note">{one.sampledOn ? day(one.sampledOn) : ""}</span>
          </span>
          <p className="note">{[one.bottleCode, one.samplingPlace].filter(Boolean).join(", ")}</p>
        </Band>
      ))}
      <History site={site} />
    </Screen>
  );
}

/** Measured figures solid, completed ones hollow with their interval. */
function Constituents({ constituents }: { constituents: readonly JudgedConstituent[] }) {
  const rows = [...constituents].sort((a, b) => Number(b.measured) - Number(a.measured));
  return rows.map(({ id, measured, low, middle, high }) => {
    const text = messages.water.range(low, middle, high, measured);
    const unit = messages.water.unit(id);
    return (
      <Band key={id}>
        <span className="row">
          <span>{messages.water.name(id)}</span>
          <span className="note">{measured ? messages.water.measured : messages.water.completed}</span>
        </span>
        <span className="with-u constituent">
          <Numeral hollow={!measured} height={40} text={text} name={`${text} ${unit}`} />
          <span>{unit}</span>
        </span>
      </Band>
    );
  });
}
