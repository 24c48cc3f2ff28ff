/** What the book says of its own work. */
export const scoreEn = {
  title: "Own score",
  since: (day: string) => `visits since ${day}`,
  counting: (done: number) => `counting, ${done} visits so far`,
  readings: "Told, then read",
  inside: (share: string) => `${share} of the readings of sound units lay where they were told to lie`,
  insideOf: (inside: number, told: number, range: string) =>
    `${inside} of ${told}, so ${range}; a band is to hold 19 of 20`,
  noneTold: "No band could be told yet.",
  causes: "Said, then found",
  noneFound: "No cause was put right and confirmed yet.",
  firstOf: (first: number, all: number) => `named first ${first} of ${all}`,
  saidInstead: (cause: string) => `said first: ${cause}`,
  elements: "Membrane elements",
  element: {
    keptAsGood: "kept past their day: they read as good",
    new: "changed",
    newThoughGood: "changed although they read as good",
  },
  callBacks: "Called back within 30 days",
  noneBack: "None.",
  afterVisitOf: (who: string) => `after a visit of ${who || "nobody named"}`,
  people: "By technician",
  person: (visits: number, back: number) =>
    `${visits} ${visits === 1 ? "visit" : "visits"}, ${back} called back`,
  small: "Small numbers say little: compare over years, not over weeks.",
};
