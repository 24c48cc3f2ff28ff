import { prepareZXingModule, readBarcodes } from "zxing-wasm/reader";
import wasmUrl from "zxing-wasm/reader/zxing_reader.wasm?url";

interface Detector {
  detect(source: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorMaker = { new (options?: { formats: string[] }): Detector };

/** Reads the QR sign in a picture; nothing when there is none. The phone's own reader where it has one, else ours. */
export async function readSign(picture: ImageData): Promise<string | undefined> {
  const own = (globalThis as unknown as { BarcodeDetector?: DetectorMaker }).BarcodeDetector;
  if (own) {
    const found = await new own({ formats: ["qr_code"] }).detect(picture).catch(() => []);
    if (found[0]) return found[0].rawValue;
  }
  prepareZXingModule({ overrides: { locateFile: () => wasmUrl } });
  const [sign] = await readBarcodes(picture, { formats: ["QRCode"], maxNumberOfSymbols: 1, tryHarder: true });
  return sign?.isValid ? sign.text : undefined;
}

/** Any code of a maker's label: lines, squares, QR. Nothing when there is none. */
export async function readLabelCode(picture: ImageData): Promise<string | undefined> {
  const own = (globalThis as unknown as { BarcodeDetector?: DetectorMaker }).BarcodeDetector;
  if (own) {
    const found = await new own().detect(picture).catch(() => []);
    if (found[0]) return found[0].rawValue;
  }
  prepareZXingModule({ overrides: { locateFile: () => wasmUrl } });
  const [sign] = await readBarcodes(picture, { maxNumberOfSymbols: 1, tryHarder: true });
  return sign?.isValid ? sign.text : undefined;
}

const LONGEST_SIDE_PX = 1200;

/** The picture of a photo or a video frame, made smaller where it is large. */
export function pixelsOf(source: CanvasImageSource, width: number, height: number): ImageData | undefined {
  const scale = Math.min(1, LONGEST_SIDE_PX / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.round(width * scale);
  canvas.height = Math.round(height * scale);
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  if (!pen || canvas.width === 0 || canvas.height === 0) return undefined;
  pen.drawImage(source, 0, 0, canvas.width, canvas.height);
  return pen.getImageData(0, 0, canvas.width, canvas.height);
}
