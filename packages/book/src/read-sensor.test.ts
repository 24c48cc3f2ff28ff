import { expect, it } from "vitest";
import { readSensor, sensorSummary } from "./read-sensor.ts";

const read = (csv: string, offset?: number) => {
  const preview = readSensor(csv, offset);
  if (preview.kind !== "known") throw new Error(JSON.stringify(preview));
  return preview.value;
};

/** Times as in ISO 8601 / RFC 3339: a zone written rules, else the phone's own. */
it("takes readings and alarms in by their time, comma or semicolon, with or without a zone", () => {
  const { lines, refused, unknownColumns } = read(
    "Time;Value;Unit;Alarm;battery\n2026-11-25 08:30;12,5;ppm;;90\n2026-11-25T08:00:00+02:00;11;ppm;;90\n2026-11-25 09:00;;;water on floor;90",
    60,
  );
  expect(lines).toEqual([
    { at: "2026-11-25T06:00:00.000Z", value: 11, unit: "ppm" },
    { at: "2026-11-25T07:30:00.000Z", value: 12.5, unit: "ppm" },
    { at: "2026-11-25T08:00:00.000Z", alarm: "water on floor" },
  ]);
  expect([refused, unknownColumns]).toEqual([[], ["battery"]]);
});

it("a bad row is refused by its line and reason, the others stand", () => {
  const rows = [
    "yesterday,1,ppm",
    "2026-02-30 08:00,1,ppm",
    "2026-11-25 08:00,high,ppm",
    "2026-11-25 08:05,,",
    "2026-11-25 08:10,1,ppm",
    "2026-11-25 08:10,1,ppm",
  ];
  const { lines, refused } = read(["time,value,unit", ...rows].join("\r\n"));
  expect(lines).toHaveLength(1);
  expect(refused.map(({ line, code }) => [line, code])).toEqual([
    [2, "row-no-such-time"],
    [3, "row-no-such-time"],
    [4, "row-not-a-number"],
    [5, "row-says-nothing"],
    [7, "row-twice"],
  ]);
});

it.each([
  ["", "list-empty"],
  ["value,unit\n1,ppm", "list-column-missing"],
  ["time,time\n1,2", "list-column-twice"],
])("%j is refused as a whole", (csv, code) => {
  expect(readSensor(csv)).toMatchObject({ kind: "refused", code });
});

it("says its span, the lowest and highest of each unit, and its alarms", () => {
  const { lines } = read(
    "time,value,unit,alarm\n2026-11-24 08:00,9,ppm,\n2026-11-25 08:00,14,ppm,high\n2026-11-25 09:00,3,bar,",
  );
  expect(sensorSummary({ lines })).toEqual({
    from: "2026-11-24",
    until: "2026-11-25",
    count: 3,
    alarms: 1,
    spans: [
      { unit: "ppm", low: 9, high: 14 },
      { unit: "bar", low: 3, high: 3 },
    ],
  });
});
