import { INPUTS } from "../features.ts";
import { HIDDEN, type Network, OUTPUTS } from "../network.ts";

/** Matrices as whole numbers of −127 to 127 with one scale a row; offsets as they are. Little-endian, base64. */
const shapes = {
  w1: [INPUTS, HIDDEN],
  w2: [HIDDEN, HIDDEN],
  w3: [HIDDEN, OUTPUTS],
} as const;
const offsets = { b1: HIDDEN, b2: HIDDEN, b3: OUTPUTS } as const;

export function packNetwork(network: Network): string {
  const floats: number[] = [];
  const bytes: number[] = [];
  for (const key of Object.keys(offsets) as (keyof typeof offsets)[]) floats.push(...network[key]);
  for (const [key, [rows, columns]] of Object.entries(shapes) as [
    keyof typeof shapes,
    readonly [number, number],
  ][])
    for (let row = 0; row < rows; row++) {
      const values = network[key].subarray(row * columns, (row + 1) * columns);
      const most = values.reduce((top, value) => Math.max(top, Math.abs(value)), 1e-9);
      floats.push(most / 127);
      for (const value of values) bytes.push(Math.round((value / most) * 127) & 255);
    }
  const head = new Uint8Array(Float32Array.from(floats).buffer);
  return toBase64([...head, ...bytes]);
}

export function unpackNetwork(text: string): Network {
  const bytes = fromBase64(text);
  const rowsInAll = Object.values(shapes).reduce((sum, [rows]) => sum + rows, 0);
  const floatCount = rowsInAll + Object.values(offsets).reduce((sum, n) => sum + n, 0);
  const floats = new Float32Array(bytes.slice(0, 4 * floatCount).buffer);
  let float = 0;
  let byte = 4 * floatCount;
  const offset = (n: number) => {
    float += n;
    return floats.slice(float - n, float);
  };
  const matrix = ([rows, columns]: readonly [number, number]) => {
    const values = new Float32Array(rows * columns);
    for (let row = 0; row < rows; row++) {
      const scale = floats[float++]!;
      for (let i = 0; i < columns; i++) values[row * columns + i] = ((bytes[byte++]! << 24) >> 24) * scale;
    }
    return values;
  };
  const [b1, b2, b3] = [offset(offsets.b1), offset(offsets.b2), offset(offsets.b3)];
  return { b1, b2, b3, w1: matrix(shapes.w1), w2: matrix(shapes.w2), w3: matrix(shapes.w3) };
}

const SIGNS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

function toBase64(bytes: readonly number[]): string {
  let text = "";
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    for (let k = 0; k < 4; k++) text += i + k > bytes.length ? "=" : SIGNS[(group >> (18 - 6 * k)) & 63];
  }
  return text;
}

function fromBase64(text: string): Uint8Array {
  const padding = text.endsWith("==") ? 2 : text.endsWith("=") ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3);
  for (let i = 0, at = 0; i < text.length; i += 4) {
    let group = 0;
    for (let k = 0; k < 4; k++) group = (group << 6) | Math.max(0, SIGNS.indexOf(text[i + k]!));
    bytes[at++] = group >> 16;
    bytes[at++] = group >> 8;
    bytes[at++] = group;
  }
  return bytes.subarray(0, bytes.length - padding);
}
