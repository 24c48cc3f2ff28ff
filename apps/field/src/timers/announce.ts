export type Telling = "canAsk" | "allowed" | "notAllowed";

/** Whether this phone tells when a timer is ready while the app is behind another. */
export function tellingState(): Telling {
  if (typeof Notification === "undefined") return "notAllowed";
  if (Notification.permission === "granted") return "allowed";
  return Notification.permission === "denied" ? "notAllowed" : "canAsk";
}

/** Asks for the permission; call it from a tap only. */
export async function askToTell(): Promise<Telling> {
  if (typeof Notification === "undefined") return "notAllowed";
  await Notification.requestPermission().catch(() => "denied");
  return tellingState();
}

/** A short buzz, and a notification when the app is not in front and the phone allows it. */
export function announce(text: string, tag: string) {
  navigator.vibrate?.([200, 100, 200]);
  if (document.visibilityState === "visible" || tellingState() !== "allowed") return;
  const options = { tag, body: "", requireInteraction: true };
  void navigator.serviceWorker?.ready
    .then((registration) => registration.showNotification(text, options))
    .catch(() => undefined);
}
