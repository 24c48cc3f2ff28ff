/**
 * The one text of a JSON value: keys sorted by UTF-16 code units, no white space, numbers as ECMAScript
 * writes them. Members that are `undefined` are left out. Anything JSON cannot hold throws.
 * Source: RFC 8785, section 3.2.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(",")}]`;
  if (typeof value === "object" && value !== null) return canonicalObject(value);
  return canonicalScalar(value);
}

function canonicalObject(value: object): string {
  const members = Object.entries(value)
    .filter(([, member]) => member !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([name, member]) => `${canonicalScalar(name)}:${canonicalJson(member)}`);
  return `{${members.join(",")}}`;
}

const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/;

function canonicalScalar(value: unknown): string {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error("JSON has no NaN or infinity");
  if (typeof value === "string" && LONE_SURROGATE.test(value)) throw new Error("lone surrogate in JSON text");
  const text = JSON.stringify(value);
  if (text === undefined) throw new Error(`JSON cannot hold a ${typeof value}`);
  return text;
}
