import { sensorSummary } from "@tapside/book";
import type { Kept, SensorLog } from "@tapside/records";
import { inSign } from "@tapside/words";
import { Band } from "../look/band.tsx";
import { messages } from "../words/messages.ts";
import { officeWords } from "../words/office.ts";
import { day } from "./day.ts";

/** What fitted sensors wrote, a band a file: its days, its lowest and highest, its alarms. */
export function SensorLogs({ logs, to }: { logs: readonly Kept<SensorLog>[]; to?: string }) {
  return logs.map((log) => {
    const { from, until, count, alarms, spans } = sensorSummary(log);
    return (
      <Band key={log.id} {...(to !== undefined && { press: { to } })} fixed={alarms > 0}>
        <span className="row">
          <span>{[day(from), until === from ? "" : day(until)].filter(Boolean).join(" – ")}</span>
          <span className="note">{log.name}</span>
        </span>
        <p className="note">
          {[
            officeWords.sensorReadings(count),
            ...spans.map(({ unit, low, high }) =>
              inSign(`${low === high ? low : `${low} – ${high}`}`, messages.decimalSign)
                .concat(` ${unit}`)
                .trim(),
            ),
            alarms > 0 ? officeWords.sensorAlarms(alarms) : "",
          ]
            .filter(Boolean)
            .join(" · ")}
        </p>
      </Band>
    );
  });
}
