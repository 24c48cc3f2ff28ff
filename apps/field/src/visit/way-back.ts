/** A number taken up from another screen of the visit leads back there once. */
let way: { readonly base: string; readonly stepId: string; readonly place: string } | undefined;

export function leaveWayBack(base: string, stepId: string, place: string): void {
  way = { base, stepId, place };
}

/** Where to go after this step instead of the order of hands; forgotten once taken. */
export function takeWayBack(base: string, stepId: string): string | undefined {
  if (way?.base !== base || way.stepId !== stepId) return undefined;
  const { place } = way;
  way = undefined;
  return place;
}
