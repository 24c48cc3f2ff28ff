import type { RecordContent } from "@tapside/report";
import { recordPdf } from "@tapside/report/pdf";
import boldUrl from "../../../../packages/pictures/fonts/B612-Bold.otf?url";
import regularUrl from "../../../../packages/pictures/fonts/B612-Regular.otf?url";

const bytesAt = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer());

/** Makes the PDF away from the screen, so that it never stops following the finger. */
self.addEventListener("message", async (event: MessageEvent<{ content: RecordContent; mark: string }>) => {
  try {
    const [regular, bold] = await Promise.all([bytesAt(regularUrl), bytesAt(boldUrl)]);
    const pdf = await recordPdf(event.data.content, event.data.mark, { regular, bold });
    self.postMessage({ pdf });
  } catch (error) {
    self.postMessage({ failed: String(error) });
  }
});
