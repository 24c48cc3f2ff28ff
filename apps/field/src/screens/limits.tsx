import type { LimitQuantity } from "@tapside/records";
import { Band } from "../look/band.tsx";
import { ChoiceField } from "../look/fields/choice-field.tsx";
import { Form } from "../look/form.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";
import { setupWords } from "../words/setup.ts";
import { Remove } from "./remove.tsx";
import { LIMIT_UNITS, limitSpecs } from "./specs/appliance-specs.ts";
import { choicesOf } from "./specs/units-offered.ts";

/** The limits of an appliance or of a type; each is asked of what, then in what. */
export function Limits({ owner, home }: { owner: string; home: string }) {
  const { live, snapshot } = useBook();
  const limits = [...snapshot.book.limit.values()].filter((limit) => limit.appliance === owner);
  return (
    <>
      <Band tint>
        <strong>{words.limits}</strong>
      </Band>
      {limits.map((limit) => (
        <fieldset className="set" key={limit.id}>
          <legend className="unseen">{words.limits}</legend>
          <ChoiceField
            label={setupWords.limit.of}
            value={limit.quantity ?? ""}
            choices={choicesOf(setupWords.limit.quantities)}
            ask={words.limitAsk}
            onChange={(quantity) =>
              void live.write("limit", limit.id, ofQuantity(quantity as LimitQuantity | null))
            }
          />
          <Form kind="limit" id={limit.id} specs={limitSpecs(limit.quantity)} />
          <Remove kind="limit" id={limit.id} to={home} />
        </fieldset>
      ))}
      <Band press={{ onPress: () => void live.write("limit", live.newId(), { appliance: owner }) }}>
        <strong>{words.addLimit}</strong>
      </Band>
    </>
  );
}

/** Another quantity has another unit: the numbers and the scale of the one before do not carry over. */
const ofQuantity = (quantity: LimitQuantity | null) => ({
  quantity,
  unit: quantity ? LIMIT_UNITS[quantity].unit : null,
  scale: null,
  low: null,
  high: null,
});
