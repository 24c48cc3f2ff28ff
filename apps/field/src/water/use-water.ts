import type { FieldReadings } from "@tapside/water";
import { useEffect, useRef, useState } from "react";
import type { WaterAsked, WaterTold } from "./water-worker.ts";
import WaterWorker from "./water-worker.ts?worker";

/** The completed water from the worker: one question at a time, and after it only the newest of those that waited. */
export function useWater(readings: FieldReadings): WaterTold | undefined {
  const [told, setTold] = useState<WaterTold>();
  const worker = useRef<Worker>(undefined);
  const waiting = useRef<WaterAsked>(undefined);
  const busy = useRef(false);
  const key = JSON.stringify(readings);
  useEffect(() => {
    const made = new WaterWorker();
    worker.current = made;
    busy.current = false;
    made.addEventListener("message", ({ data }: MessageEvent<WaterTold>) => {
      setTold(data);
      busy.current = waiting.current !== undefined;
      if (waiting.current) made.postMessage(waiting.current);
      waiting.current = undefined;
    });
    return () => made.terminate();
  }, []);
  useEffect(() => {
    const ask = () => {
      const asked = { key, readings: JSON.parse(key) as FieldReadings };
      if (busy.current) waiting.current = asked;
      else {
        busy.current = true;
        worker.current?.postMessage(asked);
      }
    };
    const afterDrawing = setTimeout(ask, 0);
    return () => clearTimeout(afterDrawing);
  }, [key]);
  return told?.key === key ? told : undefined;
}
