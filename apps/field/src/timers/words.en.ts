/** What the timers say. One object per language. */
export const timerEn = {
  title: "Waiting",
  none: "Nothing is running.",
  start: (what: string, minutes: number) => `${what}, ${minutes} min`,
  startHint: "starts at the tap",
  ready: "ready",
  readySince: "ready since",
  readyFor: (what: string) => `Ready: ${what}`,
  over: (text: string) => `over by ${text}`,
  of: (minutes: number) => `of ${minutes} min`,
  stop: "Done",
  longer: "5 min more",
  nextForHands: "Next for your hands",
  clockJumped: (minutes: string) =>
    `The phone's clock was set ${minutes} while this ran; it is counted without that.`,
  forward: (text: string) => `forward by ${text}`,
  back: (text: string) => `back by ${text}`,
  atLeast: (text: string) => `back by at least ${text}`,
  tellMe: "Tell me when one is ready",
  tellMeHint:
    "a notification, where this phone allows it; a ready timer also stands on every screen of the visit",
  willTell: "This phone will tell when one is ready, as long as the app is kept open behind.",
  willNotTell:
    "This phone does not allow notifications here. A ready timer stands on every screen of the visit.",
  open: "Timers",
};
