import type { Messages } from "../messages.ts";
import { missingName } from "./names.ts";

/** A likely slip, asked and never corrected. */
export const question: Messages["question"] = ({ id, slots, detail = {} }) => {
  const name = missingName(slots[0] ?? "");
  switch (id) {
    case "barAsPsi":
      return `${detail.value} psi ${name}: was that bar?`;
    case "psiAsBar":
      return `${detail.value} bar ${name}: was that psi?`;
    case "fahrenheitAsCelsius":
      return `${detail.value} °C feed: was that °F?`;
    case "celsiusAsFahrenheit":
      return `${detail.value} °F feed: was that °C?`;
    case "pressuresOutOfOrder":
      return "More pressure after the filters than before: gauges swapped?";
    case "flowingAboveStatic":
      return "Flowing pressure above standing pressure: swapped?";
    case "tankAboveFeedPressure":
      return "Tank far above the feed: a re-pressure or permeate pump the record does not name, or a slip?";
    case "tankRoseWhileDrawing":
      return "The tank gauge rose while drawing: swapped?";
    case "permeateAboveFeed":
      return "Permeate saltier than feed: samples swapped?";
    case "deliveredAboveFeed":
      return "Delivered saltier than feed: samples swapped?";
    case "deliveredBelowPermeate":
      return "Tank water cleaner than the membrane makes it: first water after standby, or a slip?";
    case "chlorineRises":
      return "More chlorine after carbon than before: swapped?";
    case "flowsSwapped":
      return `${detail.recovery} % recovery: permeate and drain swapped?`;
    case "drainAgainstRestrictor":
      return `Drain is ${detail.ratio} × what the restrictor passes: cup size right?`;
    case "meterOnAnotherScale":
      return `Feed ${signed(detail.percent)} %, rejection unchanged: meter on another scale than ${detail.scale}?`;
    case "freeAboveTotal":
      return "More free chlorine than total: swapped?";
    case "saltDoesNotBalance":
      return `Drain TDS ${signed(detail.percent)} % beside what feed, product and flows give: a slip in one of them?`;
    case "meterWentBack":
      return `Meter below last visit's ${detail.last} m³: new meter, or a slip?`;
    default:
      return `${name}: is that right?`;
  }
};

const signed = (x: string | number | undefined): string =>
  typeof x === "number" && x > 0 ? `+${x}` : String(x ?? "");
