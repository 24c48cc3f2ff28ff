import { useSyncExternalStore } from "react";

/** One query for every drawing: a screen asks it dozens of times at once. */
const dark = window.matchMedia("(prefers-color-scheme: dark)");

function subscribe(listener: () => void) {
  dark.addEventListener("change", listener);
  return () => dark.removeEventListener("change", listener);
}

const theme = (): "light" | "dark" => (dark.matches ? "dark" : "light");

/** "dark" when the system is dark. */
export const useTheme = (): "light" | "dark" => useSyncExternalStore(subscribe, theme);
