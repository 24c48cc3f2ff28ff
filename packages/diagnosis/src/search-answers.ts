/** Names of the visit's answers that hold how the search goes; each is kept as the field `answer:<name>`. */
export const SEARCH = {
  /** Causes put right, in the order of hands. */
  repaired: "cause.repaired",
  /** When each of them was put right, in the same order, ISO 8601. */
  repairedAt: "cause.repairedAt",
  /** Causes the technician confirms. */
  found: "cause.found",
  complaint: "cause.complaint",
  kitchenBusy: "cause.kitchenBusy",
  toolsMissing: "cause.toolsMissing",
  setUps: "cause.setUps",
} as const;
