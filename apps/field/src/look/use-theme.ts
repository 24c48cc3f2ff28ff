import { useSyncExternalStore } from "react";

const dark = () => window.matchMedia("(prefers-color-scheme: dark)");

function subscribe(listener: () => void) {
  const query = dark();
  query.addEventListener("change", listener);
  return () => query.removeEventListener("change", listener);
}

/** "dark" when the system is dark. */
export const useTheme = (): "light" | "dark" =>
  useSyncExternalStore(subscribe, () => (dark().matches ? "dark" : "light"));
