import { known, type Outcome, refused } from "@tapside/quantities";
import type { RecordContent } from "@tapside/report";
import PdfWorker from "./pdf-worker.ts?worker";

/** The PDF of a frozen record, made in a worker of its own. Refused: "pdf-failed". */
export function makePdf(content: RecordContent, mark: string): Promise<Outcome<Blob>> {
  const worker = new PdfWorker();
  return new Promise((resolve) => {
    const end = (outcome: Outcome<Blob>) => {
      worker.terminate();
      resolve(outcome);
    };
    worker.addEventListener("error", (event) => end(refused("pdf-failed", { reason: event.message })));
    worker.addEventListener(
      "message",
      ({ data }: MessageEvent<{ pdf?: Uint8Array<ArrayBuffer>; failed?: string }>) =>
        end(
          data.pdf
            ? known(new Blob([data.pdf], { type: "application/pdf" }))
            : refused("pdf-failed", { reason: data.failed ?? "" }),
        ),
    );
    worker.postMessage({ content, mark });
  });
}
