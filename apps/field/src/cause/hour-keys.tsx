import { hourOf, SEARCH, SET_UP_IDS, TOOLS } from "@tapside/diagnosis";
import type { OpenVisit } from "../visit/use-visit.ts";
import { causeWords as words } from "./words.ts";

/** Whether the kitchen is busy, what is in the van, what is prepared already: the next test depends on it. */
export function HourKeys({ open }: { open: OpenVisit }) {
  const { kitchenBusy, tools, setUps } = hourOf(open);
  const without = <T,>(list: readonly T[], one: T) => list.filter((other) => other !== one);
  const kept = <T,>(list: readonly T[]) => (list.length > 0 ? list : null);
  return (
    <>
      <Toggles
        legend={words.kitchen}
        keys={[
          [words.busy, kitchenBusy, () => open.write({ [`answer:${SEARCH.kitchenBusy}`]: true })],
          [words.quiet, !kitchenBusy, () => open.write({ [`answer:${SEARCH.kitchenBusy}`]: null })],
        ]}
      />
      <Toggles
        legend={words.inTheVan}
        keys={TOOLS.map((tool) => {
          const isHere = tools.includes(tool);
          const left = isHere ? without(tools, tool) : [...tools, tool];
          const missing = TOOLS.filter((one) => !left.includes(one));
          return [
            words.tools[tool],
            isHere,
            () => open.write({ [`answer:${SEARCH.toolsMissing}`]: kept(missing) }),
          ];
        })}
      />
      <Toggles
        legend={words.prepared}
        keys={SET_UP_IDS.map((id) => {
          const made = setUps.includes(id) ? without(setUps, id) : [...setUps, id];
          return [
            words.sentence(words.setUps[id]),
            setUps.includes(id),
            () => open.write({ [`answer:${SEARCH.setUps}`]: kept(made) }),
          ];
        })}
      />
    </>
  );
}

interface TogglesProps {
  readonly legend: string;
  readonly keys: readonly (readonly [label: string, pressed: boolean, onPress: () => void])[];
}

const Toggles = ({ legend, keys }: TogglesProps) => (
  <fieldset className="answers">
    <legend>{legend}</legend>
    {keys.map(([label, pressed, onPress]) => (
      <button type="button" key={label} aria-pressed={pressed} onClick={onPress}>
        {label}
      </button>
    ))}
  </fieldset>
);
