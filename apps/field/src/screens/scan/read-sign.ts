import { prepareZXingModule, type ReadInputBarcodeFormat, readBarcodes } from "zxing-wasm/reader";
import wasmUrl from "zxing-wasm/reader/zxing_reader.wasm?url";

interface Detector {
  detect(source: ImageBitmapSource): Promise<readonly { readonly rawValue: string }[]>;
}
type DetectorMaker = { new (options?: { formats: string[] }): Detector };

/** Reads the QR sign in a picture; nothing when there is none. */
export const readSign = (picture: ImageData): Promise<string | undefined> =>
  readCode(picture, { own: ["qr_code"], ours: ["QRCode"] });

/** Any code of a maker's label: lines, squares, QR. Nothing when there is none. */
export const readLabelCode = (picture: ImageData): Promise<string | undefined> => readCode(picture);

/** By the phone's own reader where it has one, else by ours; of every kind they know, or of those named. */
async function readCode(
  picture: ImageData,
  kinds?: { readonly own: string[]; readonly ours: ReadInputBarcodeFormat[] },
): Promise<string | undefined> {
  const Own = (globalThis as unknown as { BarcodeDetector?: DetectorMaker }).BarcodeDetector;
  if (Own) {
    const found = await new Own(kinds && { formats: kinds.own }).detect(picture).catch(() => []);
    if (found[0]) return found[0].rawValue;
  }
  prepareZXingModule({ overrides: { locateFile: () => wasmUrl } });
  const [sign] = await readBarcodes(picture, {
    ...(kinds && { formats: kinds.ours }),
    maxNumberOfSymbols: 1,
    tryHarder: true,
  });
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
