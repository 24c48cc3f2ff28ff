import { saturationCurve } from "@tapside/pictures";
import type { FieldReadings } from "@tapside/water";
import { useMemo } from "react";
import { Band } from "../look/band.tsx";
import { Picture } from "../look/picture.tsx";
import { useTheme } from "../look/use-theme.ts";
import { messages } from "../words/messages.ts";
import { quickCurve } from "./quick-curve.ts";
import type { WaterTold } from "./water-worker.ts";
import { waterPageWords } from "./words.ts";

const words = messages.water;

interface CurveProps {
  readonly readings: FieldReadings;
  readonly told: WaterTold | undefined;
  readonly appliances: readonly { readonly name: string; readonly temperatureC: number }[];
}

/** Saturation against temperature: the curve at once, its band and the plain words as soon as the worker has them. */
export function Curve({ readings, told, appliances }: CurveProps) {
  const theme = useTheme();
  const key = JSON.stringify(readings);
  const quick = useMemo(() => quickCurve(JSON.parse(key) as FieldReadings), [key]);
  const band = told?.judged?.band ?? [];
  const points =
    band.length > 0
      ? band.map(({ temperatureC, calciteIndex: [low, middle, high] }) => ({
          temperatureC,
          low,
          middle,
          high,
        }))
      : quick.kind === "known"
        ? quick.value
        : [];
  const hottest = band.at(-1);
  const said = hottest ? words.heated(hottest) : "";
  if (points.length === 0) return <NoCurve quick={quick} />;
  return (
    <>
      <div className="band curve" data-band={band.length > 0} data-curve={key}>
        <Picture
          svg={saturationCurve({
            theme,
            points,
            appliances,
            description: `${words.curve}. ${said}`,
            words,
          })}
        />
      </div>
      <Band>
        <p className="said" role="status">
          <strong>{said || "…"}</strong>
        </p>
      </Band>
    </>
  );
}

/** Why there is no curve. A contradiction keeps the curve's place: it comes and goes while figures are typed. */
function NoCurve({ quick }: { quick: ReturnType<typeof quickCurve> }) {
  if (quick.kind === "refused")
    return (
      <div className="band curve none">
        <p className="problem" role="status">
          {messages.refusal(quick)}
        </p>
      </div>
    );
  return (
    <Band>
      <p className="note">{quick.kind === "known" ? waterPageWords.noLime : words.unknown}</p>
    </Band>
  );
}
