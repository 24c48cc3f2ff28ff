import type { LitresFrom } from "@tapside/book";

/** What the page of a kitchen's day says. */
export const kitchenDayEn = {
  open: "The kitchen's day",
  openHint: "does the tank keep up, and what would help",
  title: "The kitchen's day",
  unit: "Unit",
  tryChange: "Try a change",
  enough: "enough",
  short: "short",
  perDay: "L/day",
  serves: (litres: string) => `serves ${litres} L a day`,
  inWater: (celsius: string) => `in water of ${celsius} °C`,
  colder: "Colder water",
  warmer: "Warmer water",
  runsShort: (days: string, litres: string) => `${days} of 100 busy days run short, mostly by ${litres} L`,
  neverShort: "No busy day runs short as told.",
  lowest: (from: string, until: string) => `The tank stands lowest from ${from} to ${until}.`,
  drains: (litres: string, hours: string) => `${litres} L a day to the drain, ${hours} h running.`,
  tankPanel: (litres: string, psi: string | undefined) =>
    psi ? `in the tank above ${psi} psi: up to ${litres} L` : `in the tank: up to ${litres} L`,
  askedPanel: (litres: string) => `asked in an hour: up to ${litres} L`,
  working: "Working it out",
  whatHelps: "What would help",
  servesMore: "What would serve more",
  appliances: "What the appliances take",
  from: {
    told: (litres: string, hours: string) => `${litres} L on a busy day, ${hours}`,
    counter: (litres: string, hours: string) =>
      `${litres} L a day by its counter, days off counted; ${hours}`,
    nowhere: () => "litres a day not told: left out",
  } as Readonly<Record<LitresFrom, (litres: string, hours: string) => string>>,
  between: (from: string, until: string) => `${from} to ${until}`,
  restaurantHours: "spread as in a restaurant",
  estimate:
    "Estimate from the model: a busy day in twenty may run short; busy days differ by 15 %, litres told by 20 %, draws of 3 L (common practice, no source). Booster and membrane are assumed ones. Pressure above the plate needs a reducing valve.",
};
