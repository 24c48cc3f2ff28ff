import { applianceMake, type WaterJudged } from "@tapside/assessment";
import { saturationCurve } from "@tapside/pictures";
import type { UnitFile } from "@tapside/records";
import type { Messages } from "@tapside/words";
import type { Block } from "./block.ts";

/** The paper's face has no small figures. */
const plain = (text: string) => text.replaceAll("₃", "3").replaceAll("₂", "2");

/** Half a page: the feed water as it was completed, and what it does when heated. Nothing where nothing is known of it. */
export function waterHere(water: WaterJudged | undefined, file: UnitFile, words: Messages): Block[] {
  if (!water || water.band.length === 0) return [];
  const said = words.water;
  const hottest = water.band.at(-1)!;
  const heated = said.heated(hottest);
  const line = (measured: boolean) =>
    water.constituents
      .filter((one) => one.measured === measured)
      .map((one) =>
        `${said.name(one.id)} ${said.range(one.low, one.middle, one.high, measured)} ${plain(said.unit(one.id))}`.trim(),
      )
      .join(", ");
  const given = water.given.map((id) => said.name(id).toLowerCase().replace("ph", "pH")).join(", ");
  return [
    { kind: "heading", text: said.title },
    { kind: "paragraph", text: heated },
    {
      kind: "figure",
      svg: saturationCurve({
        theme: "paper",
        points: water.band.map(({ temperatureC, calciteIndex: [low, middle, high] }) => ({
          temperatureC,
          low,
          middle,
          high,
        })),
        appliances: file.appliances.map((one) => {
          const { name, hottestC } = applianceMake(one);
          return { name, temperatureC: hottestC };
        }),
        description: `${said.curve}. ${heated}`,
        words: said,
      }),
      alt: `${said.curve}. ${heated}`,
      heightPt: 150,
    },
    { kind: "paragraph", text: plain(`${said.measured}: ${line(true) || given}`) },
    { kind: "list", title: said.completed, items: [line(false)] },
    { kind: "paragraph", quiet: true, text: plain(`${said.modelSpread} ${said.guidance}`) },
  ];
}
