import { type KitchenOfUnit, kitchenOfUnit, usesOf } from "@tapside/book";
import { askedOf, type KeepsUp, leastRemedy, litresByHour, type Remedy } from "@tapside/kitchen";
import { dayAtTank, findingMark } from "@tapside/pictures";
import { converted, type Outcome, type Uncertain } from "@tapside/quantities";
import { type UnitFile, unitFile, unitTitle } from "@tapside/records";
import { inSign } from "@tapside/words";
import { kitchenInLanguage } from "@tapside/words/kitchen";
import { useMemo, useState } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { Screen } from "../look/screen.tsx";
import { useTheme } from "../look/use-theme.ts";
import { Gone } from "../screens/gone.tsx";
import { whyNot } from "../screens/why-not.ts";
import { useBook } from "../store/use-book.ts";
import { contextNow } from "../visit/context-now.ts";
import { Numeral } from "../visit/numeral.tsx";
import { messages } from "../words/messages.ts";
import { setupWords } from "../words/setup.ts";
import "../visit/visit.css";
import { useRemedies } from "./use-remedies.ts";
import { kitchenDayWords as words } from "./words.ts";

/** Does the tank keep up with the kitchen's day, and what would help. */
export function KitchenDayScreen({ id }: { id: string }) {
  const { snapshot } = useBook();
  const { book } = snapshot;
  const file = useMemo(() => unitFile(book, id), [book, id]);
  const told = useMemo(() => (file ? kitchenOfUnit(file, contextNow(book)) : undefined), [file, book]);
  if (!file || !told) return <Gone />;
  if (told.kind !== "known") return <Untold file={file} told={told} />;
  return <Day file={file} told={told.value} />;
}

const said = kitchenInLanguage(messages.language).day;

/** Nothing can be said yet: the appliances are one tap away. */
function Untold({ file, told }: { file: UnitFile; told: Outcome<KitchenOfUnit> }) {
  const [first] = file.appliances;
  const unit = `/unit/${file.unit.id}`;
  return (
    <Screen
      title={words.title}
      subtitle={unitTitle(file)}
      back={{ label: words.unit, to: unit }}
      next={
        first
          ? { label: first.name ?? "", hint: setupWords.appliance.litresPerDay, to: `/appliance/${first.id}` }
          : { label: words.unit, to: `${unit}/edit` }
      }
    >
      <Band>{whyNot(told)}</Band>
      <Appliances file={file} />
    </Screen>
  );
}

function Day({ file, told }: { file: UnitFile; told: KitchenOfUnit }) {
  const [temperatureC, setTemperatureC] = useState(Math.round(told.situation.conditions.temperatureC));
  const kitchen = useMemo(() => inWaterOf(told, temperatureC), [told, temperatureC]);
  const tried = useRemedies(kitchen);
  const [now] = tried;
  const least = leastRemedy(tried);
  const unit = `/unit/${file.unit.id}`;
  return (
    <Screen
      title={words.title}
      subtitle={unitTitle(file)}
      back={{ label: words.unit, to: unit }}
      next={{ label: words.tryChange, to: `${unit}/try` }}
    >
      <p className="band">
        <strong>{said.asked(...shown(askedOf(kitchen.uses)))}</strong>
      </p>
      <div aria-live="polite">
        <div className="limit-head" aria-hidden="true">
          <span>{words.enough}</span>
          <span>{words.short}</span>
        </div>
        {now ? <RemedyBand remedy={now} least={least} /> : <p className="band">{words.working}</p>}
        {now?.answer.kind === "known" ? <Course kitchen={kitchen} day={now.answer.value} /> : null}
        <Water temperatureC={temperatureC} onTurn={setTemperatureC} />
        {tried.length > 1 ? (
          <Band tint>
            <strong>{least?.id === "asItIs" ? words.servesMore : words.whatHelps}</strong>
          </Band>
        ) : null}
        {tried.slice(1).map((one) => (
          <RemedyBand key={one.id} remedy={one} least={least} />
        ))}
      </div>
      <Appliances file={file} />
      <Band tint>
        <p className="note">{words.estimate}</p>
      </Band>
    </Screen>
  );
}

const inWaterOf = (told: KitchenOfUnit, temperatureC: number): KitchenOfUnit => ({
  ...told,
  situation: { ...told.situation, conditions: { ...told.situation.conditions, temperatureC } },
});

const litres = (value: number): string => inSign(value.toFixed(value < 9.5 ? 1 : 0), messages.decimalSign);
const shown = ({ value, u }: Uncertain) => [value.toFixed(0), (2 * u).toFixed(0)] as const;
const clock = (hour: number): string => `${hour % 24}:00`;
const psi = (kPa: number): string => converted(kPa, "kPa", "psi").toFixed(0);

/** One way to go on, what it serves, and its mark against what is asked. */
function RemedyBand({
  remedy: { id, answer, chargeKPaGauge },
  least,
}: {
  remedy: Remedy;
  least: Remedy | undefined;
}) {
  const theme = useTheme();
  const mark =
    answer.kind === "known"
      ? ({ kind: "distance", d: answer.value.distance } as const)
      : ({ kind: "cannotTell" } as const);
  const verdict = answer.kind === "known" ? said.verdicts[answer.value.verdict] : whyNot(answer);
  const air = id !== "asItIs" && chargeKPaGauge !== undefined ? said.air(psi(chargeKPaGauge)) : "";
  return (
    <article className="band finding" data-remedy={id} data-least={least?.id === id}>
      <Picture className="finding-mark" svg={findingMark({ ...mark, theme, heightPx: 99 })} />
      <h2>
        <strong>{said.remedies[id]}</strong>, {verdict}
      </h2>
      {answer.kind === "known" ? <Serves {...answer.value.serves} /> : null}
      {air ? <p className="note">{air}</p> : null}
    </article>
  );
}

function Serves({ low, high }: KeepsUp["serves"]) {
  const text = litres(low) === litres(high) ? litres(low) : `${litres(low)}–${litres(high)}`;
  return (
    <p className="row figure">
      <Numeral text={text} height={38} hollow name={words.serves(text)} />
      <span aria-hidden="true">{words.perDay}</span>
    </p>
  );
}

/** The day as told: the tank hour by hour, what is asked, and what it costs. */
function Course({ kitchen, day }: { kitchen: KitchenOfUnit; day: KeepsUp }) {
  const theme = useTheme();
  const asked = litresByHour(kitchen.uses);
  const minimum = kitchen.situation.minimumKPaGauge;
  const days = Math.round(100 * day.daysShort);
  const lines = [
    days > 0 ? `${words.runsShort(String(days), litres(day.shortL.value))}.` : words.neverShort,
    words.lowest(clock(day.tightestHour), clock(day.tightestHour + 1)),
    words.drains(litres(day.drainLPerDay), litres(day.hoursRunning)),
  ];
  return (
    <Band>
      <Picture
        svg={dayAtTank({
          theme,
          usable: day.usableByHour,
          asked,
          tightestHour: day.tightestHour,
          description: lines.join(" "),
          words: {
            usable: words.tankPanel(
              litres(Math.max(...day.usableByHour.map(({ high }) => high))),
              minimum > 0 ? psi(minimum) : undefined,
            ),
            asked: words.askedPanel(litres(Math.max(...asked))),
          },
        })}
      />
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </Band>
  );
}

/** The water's warmth, under the thumb: cold water passes the membrane slowest. */
function Water({ temperatureC, onTurn }: { temperatureC: number; onTurn: (next: number) => void }) {
  const turn = (by: number) => onTurn(Math.min(35, Math.max(1, temperatureC + by)));
  return (
    <div className="band knob-turn">
      <button type="button" aria-label={words.colder} onClick={() => turn(-1)}>
        −
      </button>
      <strong aria-live="polite">{words.inWater(String(temperatureC))}</strong>
      <button type="button" aria-label={words.warmer} onClick={() => turn(1)}>
        +
      </button>
    </div>
  );
}

/** What each appliance takes and where that is known from; a tap leads to where it is typed. */
function Appliances({ file }: { file: UnitFile }) {
  const told = usesOf(file);
  return (
    <>
      <Band tint>
        <strong>{words.appliances}</strong>
      </Band>
      {file.appliances.map((appliance) => {
        const one = told.find((each) => each.appliance === appliance.id);
        const { usedFrom, usedUntil } = appliance;
        const hours = usedFrom && usedUntil ? words.between(usedFrom, usedUntil) : words.restaurantHours;
        return (
          <Band key={appliance.id} press={{ to: `/appliance/${appliance.id}` }}>
            <span className="name">{appliance.name}</span>
            <p className="note">
              {words.from[one?.from ?? "nowhere"](litres(one?.use?.litresPerDay.value ?? 0), hours)}
            </p>
          </Band>
        );
      })}
    </>
  );
}
