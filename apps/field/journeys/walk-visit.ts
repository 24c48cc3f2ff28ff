import type { Phone } from "./phone.ts";
import { shoot } from "./shoot.ts";
import { timeCup } from "./time-cup.ts";

/** What a technician reads at an ordinary kitchen, in the units of the instruments of `setUpKitchen` or the slot's own. */
const READS: Readonly<Record<string, string>> = {
  deliveredTds: "22",
  firstDrawTds: "25",
  tankFullPressure: "42",
  waterMeter: "371",
  feedTds: "301",
  feedTemperature: "13",
  chlorineBefore: "0.9",
  chlorineAfter: "0.1",
  chlorineFreeBefore: "0.8",
  chlorineFreeAfter: "0.1",
  chloramine: "0.1",
  feedChloride: "40",
  hardness: "12",
  staticPressure: "65",
  nightPressure: "72",
  peakPressure: "52",
  beforeFilterPressure: "61",
  afterFilterPressure: "59",
  tankAfterPressure: "24",
  airCharge: "18",
  drainGap: "30",
  drainHeight: "45",
  permeateTds: "13",
};

const SECONDS: Readonly<Record<string, number>> = { permeateFlow: 81, drainFlow: 60 };

/** The one tap of every screen on which nothing is out of the ordinary. */
const TAPS: Readonly<Record<string, string | RegExp>> = {
  ask: /^In use/,
  look: "All as it should be",
  judgement: /^(Next|Replace|Set|Rinse|Sanitise|Discard|Look)/,
  valves: /^Next/,
  sign: /^Next/,
  leave: /^Left filling, not seen/,
  drips: /^No drip/,
  acceptance: /^Accepted/,
  points: /^Next/,
  optional: /^Owner keeps it/,
};

const placeOf = (phone: Phone): readonly string[] => {
  const { hash } = new URL(phone.page.url());
  return decodeURIComponent(hash).split("/").slice(3);
};

/**
 * Walks the open visit to its record, doing what an ordinary day asks. A screen is checked once for each set of `checked`: visits that
 * share the set share its screens, each pictured for every visit.
 */
export async function walkVisit(
  phone: Phone,
  name: string,
  before?: (place: readonly string[]) => Promise<boolean>,
  checked: Set<string> = new Set(),
) {
  const pictured = new Set<string>();
  for (let i = 0; i < 60; i++) {
    const place = placeOf(phone);
    const [step = "", ...rest] = place;
    if (step === "record") return;
    const kindOfScreen = step === "read" || step === "work" ? step : place.join("/");
    if (!pictured.has(kindOfScreen)) {
      pictured.add(kindOfScreen);
      await shoot(phone, `${name}-${kindOfScreen.replace("/", "-")}`);
    }
    const screen = step === "work" ? place.join("/") : kindOfScreen;
    if (!checked.has(screen)) {
      checked.add(screen);
      await phone.checkAccess(`${name} ${screen}`);
    }
    const here = phone.page.url();
    if (!(await before?.(place))) await ordinary(phone, step, rest);
    await phone.page.waitForFunction((url) => location.href !== url, here);
  }
  throw new Error(`the visit "${name}" did not end: ${phone.page.url()}`);
}

async function ordinary(phone: Phone, step: string, [first = "", slot = ""]: readonly string[]) {
  if (step === "read") {
    const seconds = SECONDS[slot];
    if (seconds) return timeCup(phone, seconds);
    return phone.number(READS[slot] ?? missing(slot));
  }
  if (step === "check") return phone.tap(/^(All of it|Next)/);
  if (step === "work") return phone.tap(/^(All done|Done)/);
  const tap = TAPS[step];
  if (!tap) throw new Error(`no ordinary tap for ${step} ${first}`);
  return phone.tap(tap);
}

function missing(slot: string): never {
  throw new Error(`no ordinary reading for ${slot}`);
}
