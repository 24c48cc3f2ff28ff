import { type RefObject, useEffect, useState } from "react";
import { pixelsOf, readSign } from "./read-sign.ts";

export type CameraState = "starting" | "looking" | "slow" | "refused";

const SLOW_MS = 8000;
const BETWEEN_MS = 250;

/** Looks through the camera until a sign is found. `found` answers whether it was one of ours. */
export function useCamera(
  video: RefObject<HTMLVideoElement | null>,
  found: (text: string) => boolean,
): CameraState {
  const [state, setState] = useState<CameraState>("starting");
  // biome-ignore lint/correctness/useExhaustiveDependencies: the camera is opened once
  useEffect(() => {
    let wanted = true;
    let stream: MediaStream | undefined;
    const look = async () => {
      stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: "environment" } });
      const screen = video.current;
      if (!wanted || !screen) return;
      screen.srcObject = stream;
      await screen.play();
      setState("looking");
      const since = performance.now();
      while (wanted) {
        const pixels = pixelsOf(screen, screen.videoWidth, screen.videoHeight);
        const text = pixels && (await readSign(pixels));
        if (wanted && text && found(text)) return;
        if (performance.now() - since > SLOW_MS) setState("slow");
        await new Promise((done) => setTimeout(done, BETWEEN_MS));
      }
    };
    look()
      .catch(() => wanted && setState("refused"))
      .finally(() => wanted || stop(stream));
    return () => {
      wanted = false;
      stop(stream);
    };
  }, []);
  return state;
}

const stop = (stream: MediaStream | undefined) => {
  for (const track of stream?.getTracks() ?? []) track.stop();
};
