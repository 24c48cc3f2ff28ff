import { type Sticker, stickersPdf } from "@tapside/report/stickers";
import boldUrl from "../../../../packages/pictures/fonts/B612-Bold.otf?url";
import regularUrl from "../../../../packages/pictures/fonts/B612-Regular.otf?url";

const bytesAt = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** Makes rolls of stickers away from the screen. */
self.addEventListener("message", async ({ data }: MessageEvent<readonly Sticker[]>) => {
  try {
    const [regular, bold] = await Promise.all([bytesAt(regularUrl), bytesAt(boldUrl)]);
    self.postMessage({ pdf: await stickersPdf(data, { regular, bold }) });
  } catch (error) {
    self.postMessage({ failed: String(error) });
  }
});
