/** Holds the lock `visit-open`, which keeps a new version of the app from taking over. Returns the way out. */
export function holdVisitOpen(): () => void {
  let release = () => {};
  const held = new Promise<void>((done) => {
    release = done;
  });
  const locks = typeof navigator === "undefined" ? undefined : navigator.locks;
  void locks?.request("visit-open", { mode: "shared" }, () => held).catch(() => undefined);
  return release;
}
