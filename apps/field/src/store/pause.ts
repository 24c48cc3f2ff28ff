/** Long work lets go of the page after this many pieces, so that it can be touched meanwhile. */
export const PIECES = 2000;

/** Lets the page draw and take touches between two stretches of long work. */
export const pause = (): Promise<void> => new Promise((goOn) => setTimeout(goOn, 0));
