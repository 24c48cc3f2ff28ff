import { isStamp } from "./hybrid-clock.ts";

/** Whether a parsed value has the shape of a change; members beyond it are welcome and kept. */
export function isChange(value: Readonly<Record<string, unknown>>): boolean {
  const { id, record, kind, device, at, schema, fields, over } = value;
  return (
    [id, record, kind, device].every((text) => typeof text === "string" && text !== "") &&
    typeof at === "string" &&
    isStamp(at) &&
    Number.isInteger(schema) &&
    Number(schema) >= 1 &&
    typeof fields === "object" &&
    fields !== null &&
    !Array.isArray(fields) &&
    (over === undefined || (Array.isArray(over) && over.every((text) => typeof text === "string")))
  );
}
