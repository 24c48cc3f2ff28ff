/** What the water pages say beside the sentences shared with paper. */
export const waterPageEn = {
  open: "Water here",
  openHint: "what it is and what it does hot",
  site: "Site",
  addAnalysis: "Add an analysis",
  analysisHint: "bottle or report",
  fileIn: "Report from a file",
  fileHint:
    "A table (CSV) of a laboratory or utility: a line a figure with quantity, value or mean, low, high and unit. Bottle, place and date may have columns. Nothing is kept before you have looked at it.",
  otherFile: "Another file",
  filePreview: (reports: number, refusedRows: number) =>
    `${reports} ${reports === 1 ? "report" : "reports"} to take in${refusedRows > 0 ? `, ${refusedRows} ${refusedRows === 1 ? "row" : "rows"} refused` : ""}.`,
  fileTaken: (n: number) => `Taken in: ${n} ${n === 1 ? "report" : "reports"}. Undo takes all of it back.`,
  lineOf: (mean: string, low: string, high: string, unit: string) => {
    const range = low || high ? `${low}–${high}` : "";
    return `${mean}${mean && range ? ` (${range})` : range} ${unit}`.trim();
  },
  analyses: "Analyses and yearly reports",
  laboratory: "Laboratory, one bottle",
  utility: "Utility, yearly report",
  origin: "From",
  sampledOn: "Taken on",
  bottleCode: "Bottle code",
  samplingPlace: "Sampling place",
  mean: "value or mean",
  low: "lowest",
  high: "highest",
  suits: "Does it suit?",
  feed: "feed",
  product: "product",
  blendOf: (percent: number) => `${percent} % feed in the product`,
  blend: "Blend valve",
  blendRange: (low: number, high: number) =>
    low === high
      ? `Every limit is kept at ${low} % feed.`
      : `Every limit is kept from ${low} to ${high} % feed.`,
  blendPerhaps: (low: number, high: number) =>
    `Perhaps ${low === high ? `at ${low}` : `from ${low} to ${high}`} % feed: what was read does not make it sure.`,
  noBlend: "No blend keeps every limit.",
  never: (limit: string) => `No blend keeps: ${limit}.`,
  against: (a: string, b: string) => `${a} stands against ${b}.`,
  remineralised: "With the remineraliser after it",
  assumedPassage: "Product not read: 5 % passage is assumed.",
  noLimits: "No appliance with a limit is entered.",
  every: "All together",
  step: (before: string) => `step from ${before}`,
  namedIndices: "Named indices",
  between: (low: string, high: string) => (low === high ? low : `${low} to ${high}`),
  indicesNote: "At the water's own temperature, not hot. None tells how a given metal corrodes.",
  charge: "Charge balance",
  conductivity: "Conductivity",
  missing: (names: string) => `not reported: ${names}`,
  hottest: "Hottest water in it (may stay blank)",
  steel: "Steel it is made of, if the manual says",
  steelAsk: "Until it is chosen, chloride is told only where 304 and 316 agree.",
  copper: "Copper or brass in its water",
  copperAsk: "Until it is chosen, low-mineral water cannot be told.",
  done: "Done",
  noLime: "Without calcium or alkalinity there is no lime to lay down.",
};
