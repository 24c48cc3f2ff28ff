/** A number as it was written: what it is and the half step its digits leave open. */
class ShownNumber {
  readonly value: number;
  readonly halfStep: number;
  constructor(text: string) {
    const [mantissa = "", exponent = "0"] = text.toLowerCase().split("e");
    this.value = Number(text);
    this.halfStep = 0.5 * 10 ** (Number(exponent) - (mantissa.split(".")[1]?.length ?? 0));
  }
}

const TOKEN = /"(?:[^"\\]|\\.)*"|'(?:[^'\\]|\\.)*'|[A-Za-z_$][\w$]*|-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/gi;

/** True when a value is the literal shown: deep equality, numbers to the digits that are written. */
export function matches(actual: unknown, shown: string): boolean {
  const literal = shown.replace(TOKEN, (token) => (/^-?\d/.test(token) ? `number("${token}")` : token));
  const read = new Function("number", `return (${literal});`);
  return agrees(
    actual,
    read((text: string) => new ShownNumber(text)),
  );
}

function agrees(actual: unknown, shown: unknown): boolean {
  if (shown instanceof ShownNumber)
    return typeof actual === "number" && Math.abs(actual - shown.value) <= shown.halfStep * (1 + 1e-9);
  if (typeof shown !== "object" || shown === null) return Object.is(actual, shown);
  if (typeof actual !== "object" || actual === null) return false;
  const keys = new Set([...Object.keys(actual), ...Object.keys(shown)]);
  return [...keys].every((key) =>
    agrees((actual as Record<string, unknown>)[key], (shown as Record<string, unknown>)[key]),
  );
}
