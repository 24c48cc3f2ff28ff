import { allKnown, known, mapOutcome, type Outcome } from "@tapside/quantities";
import { type IonsAlong, ionsAlongElement } from "@tapside/reverse-osmosis";
import type { RowVerb } from "./row-verb.ts";
import { cell, conditionsOfRow, type Row, unitOfRow } from "./unit-row.ts";
import { analysisOf } from "./water-input.ts";

const streams = ["permeate", "concentrate"] as const;

function seasonCells(season: "winter" | "summer", along: IonsAlong): Record<string, string | number> {
  const { scale, permeate, concentrate, recovery } = along;
  return {
    [`recovery_${season}`]: recovery,
    ...Object.fromEntries(streams.map((one) => [`${one}_pH_${season}`, { permeate, concentrate }[one].pH])),
    [`concentrate_SI_calcite_${season}`]: concentrate.saturation.calcite,
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

function inSeason(row: Row, temperatureC: number): Outcome<IonsAlong> {
  const given = allKnown({
    unit: unitOfRow(row),
    at: conditionsOfRow({ ...row, temperature_C: String(temperatureC) }),
    feed: analysisOf(row),
  });
  return mapOutcome(given, (v) => ionsAlongElement(v.unit, v.at, v.feed));
}

/** `tapside unit ions`: unit and analysis a row → pH of permeate and concentrate, what scales and from which recovery, winter and summer. */
export const unitIonsVerb: RowVerb = {
  summary:
    "ions along the element, a row: pH of permeate and concentrate, which mineral scales from which recovery",
  columns: [...columnsOf("winter"), ...columnsOf("summer")],
  row: (row) =>
    mapOutcome(
      allKnown({ winterC: cell(row, "winter_C", 6), summerC: cell(row, "summer_C", 20) }),
      (season) => {
        const both = allKnown({
          winter: inSeason(row, season.winterC),
          summer: inSeason(row, season.summerC),
        });
        return mapOutcome(both, ({ winter, summer }) =>
          known({ ...seasonCells("winter", winter), ...seasonCells("summer", summer) }),
        );
      },
    ),
};
