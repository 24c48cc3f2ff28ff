const KEY = "book";

export const OWN = "tapside";
export const DEMO = "tapside-demo";

/** Which book this tab has open: one's own, or the demo beside it. */
export const bookName = (): string => sessionStorage.getItem(KEY) ?? OWN;

export const turnToBook = (name: string): void => sessionStorage.setItem(KEY, name);
