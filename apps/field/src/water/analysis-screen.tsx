import { parseReading } from "@tapside/quantities";
import type { AnalysisLine } from "@tapside/records";
import { readingsOfReport, readReport, reportQuality } from "@tapside/water";
import { memo, useCallback, useDeferredValue, useId, useMemo, useRef, useState } from "react";
import { Band } from "../look/band.tsx";
import { type FieldSpec, Form } from "../look/form.tsx";
import { Screen } from "../look/screen.tsx";
import { Gone } from "../screens/gone.tsx";
import { undoOrBack } from "../screens/setup-keys.ts";
import { useBook } from "../store/use-book.ts";
import { messages } from "../words/messages.ts";
import { sayWhyNot } from "../words/say-why-not.ts";
import { Curve } from "./curve.tsx";
import { siteWater } from "./site-water.ts";
import { useWater } from "./use-water.ts";
import { waterPageWords as words } from "./words.ts";

const SPECS: readonly FieldSpec[] = [
  {
    kind: "choice",
    field: "origin",
    label: words.origin,
    choices: [
      ["laboratory", words.laboratory],
      ["utility", words.utility],
    ],
  },
  { kind: "date", field: "sampledOn", label: words.sampledOn },
  { kind: "text", field: "bottleCode", label: words.bottleCode },
  { kind: "text", field: "samplingPlace", label: words.samplingPlace },
];

/** Figures a report may hold, and the units it may print them in. */
const FIGURES: readonly (readonly [name: string, units: readonly string[]])[] = [
  ["hardness", ["mg/L as CaCO3", "gpg", "dH", "fH", "mmol/L"]],
  ["Alk", ["mg/L as CaCO3", "mg/L as HCO3", "meq/L"]],
  ["pH", [""]],
  ["ec25", ["µS/cm", "mS/m"]],
  ["tds", ["mg/L"]],
  ["temperatureC", ["°C", "°F"]],
  ["Ca", ["mg/L", "mg/L as CaCO3", "meq/L"]],
  ["Mg", ["mg/L", "mg/L as CaCO3", "meq/L"]],
  ["Na", ["mg/L"]],
  ["K", ["mg/L"]],
  ["Cl", ["mg/L"]],
  ["SO4", ["mg/L"]],
  ["NO3", ["mg/L", "mg/L as N"]],
  ["F", ["mg/L"]],
  ["SiO2", ["mg/L", "mg/L as Si"]],
];

type Typed = Readonly<Record<string, Readonly<Record<"unit" | "mean" | "low" | "high", string>>>>;

const nameOf = (id: string) => (id === "temperatureC" ? "temperature" : id);

function typedOf(lines: readonly AnalysisLine[]): Typed {
  return Object.fromEntries(
    FIGURES.map(([id, units]) => {
      const line = lines.find((one) => one.name === nameOf(id));
      const text = (value: number | undefined) => (value === undefined ? "" : String(value));
      return [
        id,
        {
          unit: line?.unit ?? units[0]!,
          mean: text(line?.mean),
          low: text(line?.low),
          high: text(line?.high),
        },
      ];
    }),
  );
}

const numberOf = (text: string): number | undefined => {
  const parsed = parseReading(text);
  return parsed.kind === "known" ? parsed.value.value : undefined;
};

/** The lines that hold a number. */
function linesOf(typed: Typed): readonly AnalysisLine[] {
  return FIGURES.flatMap(([id]) => {
    const { unit, ...texts } = typed[id]!;
    const figures = Object.entries(texts)
      .map(([name, text]) => [name, numberOf(text)] as const)
      .filter(([, value]) => value !== undefined);
    return figures.length > 0 ? [{ name: nameOf(id), unit, ...Object.fromEntries(figures) }] : [];
  });
}

/** A laboratory's bottle or a utility's year typed in; the curve follows every key. */
export function AnalysisScreen({ id }: { id: string }) {
  const { live, snapshot } = useBook();
  const entry = snapshot.book.waterAnalysis.get(id);
  const [typed, setTyped] = useState<Typed>(() => typedOf(entry?.lines ?? []));
  const report = useMemo(() => readReport(linesOf(typed)), [typed]);
  const readings = useMemo(() => (report.kind === "known" ? readingsOfReport(report.value) : {}), [report]);
  const told = useWater(readings);
  const judged = useDeferredValue(report);
  const { book } = snapshot;
  const site = entry?.site ?? "";
  const appliances = useMemo(() => siteWater(book, site).appliances, [book, site]);
  const latest = useRef(typed);
  latest.current = typed;
  const keep = useCallback(
    () => void live.write("waterAnalysis", id, { lines: linesOf(latest.current) as never }),
    [live, id],
  );
  const change = useCallback(
    (figure: string, field: string, text: string) =>
      setTyped((now) => ({ ...now, [figure]: { ...now[figure]!, [field]: text } })),
    [],
  );
  const header = useMemo(() => <Form kind="waterAnalysis" id={id} specs={SPECS} />, [id]);
  if (!entry) return <Gone />;
  const home = `/site/${entry.site ?? ""}/water`;
  return (
    <Screen
      title={entry.origin === "utility" ? words.utility : words.laboratory}
      back={undoOrBack(live, home)}
      next={{ label: words.done, to: home }}
    >
      {header}
      <Curve readings={readings} told={told} appliances={appliances} />
      <Judged report={judged} />
      {FIGURES.map(([figure, units]) => (
        <Figure
          key={figure}
          figure={figure}
          units={units}
          ranges={entry.origin === "utility"}
          typed={typed[figure]!}
          change={change}
          keep={keep}
        />
      ))}
    </Screen>
  );
}

/** Judged after the curve is drawn, so that the curve follows the key. */
const Judged = memo(function Judged({ report }: { report: ReturnType<typeof readReport> }) {
  return report.kind === "known" ? (
    <Quality report={report.value} />
  ) : (
    <Band>
      <p className="problem">{sayWhyNot(report)}</p>
    </Band>
  );
});

function Quality({ report }: { report: Parameters<typeof reportQuality>[0] }) {
  const quality = reportQuality(report);
  if (quality.kind !== "known")
    return quality.kind === "refused" ? (
      <Band>
        <p className="problem">{sayWhyNot(quality)}</p>
      </Band>
    ) : null;
  const {
    chargeImbalancePercent,
    chargeVerdict,
    conductivityRatio,
    conductivityVerdict,
    suspicions,
    missing,
  } = quality.value;
  const signed = (value: number) => `${value > 0 ? "+" : ""}${value.toFixed(0)} %`;
  return (
    <Band>
      <p>
        {words.charge}: <strong>{messages.water.verdict(chargeVerdict)}</strong>{" "}
        {chargeImbalancePercent === undefined ? "" : signed(chargeImbalancePercent)}
      </p>
      <p>
        {words.conductivity}: <strong>{messages.water.verdict(conductivityVerdict)}</strong>{" "}
        {conductivityRatio === undefined ? "" : signed(100 * (conductivityRatio - 1))}
      </p>
      {missing.length > 0 ? (
        <p className="note">{words.missing(missing.map(messages.water.name).join(", "))}</p>
      ) : null}
      {suspicions.map((one) => (
        <p key={one}>
          <strong>{messages.water.suspicion(one)}</strong>
        </p>
      ))}
    </Band>
  );
}

interface FigureProps {
  readonly figure: string;
  readonly units: readonly string[];
  readonly ranges: boolean;
  readonly typed: Typed[string];
  readonly change: (figure: string, field: string, text: string) => void;
  readonly keep: () => void;
}

const Figure = memo(function Figure({ figure, units, ranges, typed, change, keep }: FigureProps) {
  const id = useId();
  const next = units[(units.indexOf(typed.unit) + 1) % units.length]!;
  const fields = ranges ? (["mean", "low", "high"] as const) : (["mean"] as const);
  const bad = fields.some((field) => typed[field].trim() !== "" && numberOf(typed[field]) === undefined);
  return (
    <div className="band entry">
      <label htmlFor={`${id}-mean`}>{messages.water.name(figure)}</label>
      <div className={ranges ? "in-unit apart" : "in-unit"}>
        {fields.map((field) => (
          <input
            key={field}
            id={`${id}-${field}`}
            inputMode="decimal"
            autoComplete="off"
            aria-label={field === "mean" ? undefined : `${messages.water.name(figure)}, ${words[field]}`}
            placeholder={ranges ? words[field] : undefined}
            value={typed[field]}
            aria-invalid={bad}
            aria-describedby={`${id}-problem`}
            onChange={(event) => change(figure, field, event.target.value)}
            onBlur={keep}
          />
        ))}
        {units.length > 1 ? (
          <button
            type="button"
            className="unit-switch"
            onClick={() => change(figure, "unit", next)}
            onBlur={keep}
          >
            {typed.unit.replace("CaCO3", "CaCO₃").replace("HCO3", "HCO₃")}
          </button>
        ) : (
          <span className="unit">{typed.unit}</span>
        )}
      </div>
      <p id={`${id}-problem`} role="status">
        {bad ? <span className="problem">{messages.refusal({ code: "number-not-finite" })}</span> : null}
      </p>
    </div>
  );
});
