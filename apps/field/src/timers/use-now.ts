import { useEffect, useState } from "react";

/** The wall clock at this drawing; drawn again once a second and whenever the app comes back to the front. */
export function useNow(): number {
  const [, setTick] = useState(0);
  useEffect(() => {
    const look = () => setTick((tick) => tick + 1);
    const timer = setInterval(look, 1000);
    document.addEventListener("visibilitychange", look);
    return () => {
      clearInterval(timer);
      document.removeEventListener("visibilitychange", look);
    };
  }, []);
  return Date.now();
}
