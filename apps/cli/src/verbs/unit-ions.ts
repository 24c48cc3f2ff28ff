import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
import { type IonsAlong, ionsAlongElement } from "@tapside/reverse-osmosis";
import { all } from "./reader.ts";
import { rowVerb } from "./row-verb.ts";
import { feedOfRow, seasonsOfRow, unitOfRow } from "./unit-row.ts";
import { analysisIn, shown } from "./water-input.ts";

const streams = ["permeate", "concentrate"] as const;

function seasonCells(season: "winter" | "summer", along: IonsAlong): Record<string, string | number> {
  const { scale, permeate, concentrate, recovery } = along;
  return {
    [`recovery_${season}`]: recovery,
    ...Object.fromEntries(streams.map((one) => [`${one}_pH_${season}`, { permeate, concentrate }[one].pH])),
    [`concentrate_SI_calcite_${season}`]: shown(concentrate.saturation.calcite),
    [`scale_${season}`]: scale.kind === "scales" ? scale.mineral : scale.kind,
    [`scale_from_recovery_${season}`]: scale.kind === "scales" ? scale.fromRecovery : "",
  };
}

const columnsOf = (season: string) => [
  `recovery_${season}`,
  `permeate_pH_${season}`,
  `concentrate_pH_${season}`,
  `concentrate_SI_calcite_${season}`,
  `scale_${season}`,
  `scale_from_recovery_${season}`,
];

/** `tapside unit ions`: unit and analysis a row → pH of permeate and concentrate, what scales and from which recovery, winter and summer. */
export const unitIonsVerb = rowVerb({
  summary:
    "ions along the element, a row: pH of permeate and concentrate, which mineral scales from which recovery",
  columns: [...columnsOf("winter"), ...columnsOf("summer")],
  reads: all({ unit: unitOfRow, feed: feedOfRow, analysis: analysisIn(), seasons: seasonsOfRow }),
  answer: ({ unit, feed, analysis, seasons }) => {
    const at = (temperatureC: number): Outcome<IonsAlong> =>
      ionsAlongElement(unit, { ...feed, temperatureC }, analysis);
    const both = allKnown({ winter: at(seasons.winter), summer: at(seasons.summer) });
    return mapOutcome(both, ({ winter, summer }) =>
      known({ ...seasonCells("winter", winter), ...seasonCells("summer", summer) }),
    );
  },
});
