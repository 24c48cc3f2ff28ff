import { codeOfUnit } from "@tapside/book";
import type { Page } from "playwright";

/** One screen to look at: where it is in the demo book, and what is done there before the picture. */
export interface Place {
  readonly name: string;
  /** Address behind the `#`. */
  readonly to: string;
  /** What tells that the screen is finished, where its title alone does not. */
  readonly ready?: string;
  readonly before?: (page: Page) => Promise<unknown>;
  /** The technician's own, empty book instead of the demo. */
  readonly own?: boolean;
}

const UNIT = "demo:1:unit";
/** Visits of `open-visits.ts`. */
const ANNUAL = "shots-annual";
const FRESH = "shots-fresh";
const CLOSED = "demo:28:visit3";

const visit = (name: string, step: string, id = ANNUAL): Place => ({
  name: `visit-${name}`,
  to: `/visit/${id}${step}`,
});
const unit = (name: string, path: string, id = UNIT): Place => ({
  name: `unit-${name}`,
  to: `/unit/${id}${path}`,
});
const key = (page: Page, digits: string) =>
  [...digits].reduce(
    (done, digit) => done.then(() => page.locator(`.key[data-key="${digit}"]`).click()),
    Promise.resolve(),
  );
const press = (selector: string) => (page: Page) => page.locator(selector).first().click();

/** Every route of the app by the pattern the router knows it by, and where its screen is seen. */
export const PLACES: Readonly<Record<string, readonly Place[]>> = {
  "/": [
    { name: "book", to: "/" },
    { name: "book-empty", to: "/", own: true },
    { name: "book-nothing-found", to: "/", before: (page) => page.getByRole("searchbox").fill("zzz") },
    { name: "book-lot", to: "/", before: (page) => page.getByRole("searchbox").fill("2411") },
  ],
  "/more": [{ name: "more", to: "/more" }],
  "/settings": [{ name: "settings", to: "/settings" }],
  "/score": [{ name: "score", to: "/score", ready: "main .with-count" }],
  "/counts": [{ name: "counts", to: "/counts" }],
  "/practice": [
    { name: "practice", to: "/practice" },
    { name: "practice-running", to: "/practice", before: press("main button.band, main button.choice") },
  ],
  "/instruments": [{ name: "instruments", to: "/instruments" }],
  "/instrument/:id": [{ name: "instrument", to: "/instrument/demo:meter" }],
  "/instrument/:id/ledger": [{ name: "instrument-ledger", to: "/instrument/demo:meter/ledger" }],
  "/month/:month/:chain?": [{ name: "month", to: "/month/2026-03" }],
  "/van": [{ name: "van", to: "/van" }],
  "/van/:role": [{ name: "van-part", to: "/van/carbon" }],
  "/unit/:id/kitchen/:visit?": [unit("kitchen", "/kitchen"), unit("kitchen-page", "/kitchen/demo:1:visit3")],
  "/unit/:id/sensor": [unit("sensor", "/sensor")],
  "/visit/:id/counters": [visit("counters", "/counters")],
  "/models": [{ name: "models", to: "/models" }],
  "/model/:id": [{ name: "model", to: "/model/shots-model" }],
  "/appliance/:id": [{ name: "appliance", to: "/appliance/demo:1:appliance" }],
  "/part/:id": [{ name: "part", to: "/part/demo:1:carbon0" }],
  "/part/:id/move": [{ name: "part-move", to: "/part/demo:1:carbon0/move" }],
  "/point/:id": [{ name: "point", to: "/point/demo:1:point" }],
  "/site/:id": [{ name: "site", to: "/site/demo:1:site" }],
  "/site/:id/owner": [{ name: "owner", to: "/site/demo:1:site/owner" }],
  "/site/:id/water": [
    { name: "water", to: "/site/demo:1:site/water", ready: ".curve[data-band='true']" },
    { name: "water-analysed", to: "/site/shots-site/water", ready: ".curve" },
  ],
  "/site/:id/water/in": [{ name: "water-in", to: "/site/demo:1:site/water/in" }],
  "/analysis/:id": [{ name: "analysis", to: "/analysis/shots-analysis" }],
  "/chain/:name": [{ name: "chain", to: "/chain/Larkmoor%20meals" }],
  "/day/:date": [
    { name: "day", to: "/day/2026-12-01" },
    { name: "day-empty", to: "/day/2026-12-02" },
  ],
  "/scan": [{ name: "scan", to: "/scan" }],
  "/s/:code": [{ name: "sticker-new", to: "/s/0000-0000" }],
  "/call/:code": [{ name: "call", to: `/call/${codeOfUnit(UNIT)}` }],
  "/called/:code/:said": [
    {
      name: "called",
      to: `/called/${codeOfUnit(UNIT)}/${encodeURIComponent("at=2026-03-02T06:10:00.000Z&items=weak&drain=runs&alarm=E4&name=K. Finch")}`,
      ready: "main .capital",
    },
  ],
  "/list": [{ name: "list", to: "/list" }],
  "/stickers": [{ name: "stickers", to: "/stickers" }],
  "/unit/:id": [unit("sallow", ""), unit("two-elements", "", "demo:28:unit"), unit("bare", "", "shots-unit")],
  "/unit/:id/edit": [
    unit("edit", "/edit"),
    unit("edit-bare", "/edit", "shots-unit"),
    unit("edit-two-elements", "/edit", "demo:28:unit"),
  ],
  "/unit/:id/restrictor": [
    unit("restrictor", "/restrictor", "shots-unit"),
    {
      ...unit("restrictor-capillary", "/restrictor", "demo:28:unit"),
      before: async (page) => {
        await page.locator(".found-kinds button").nth(1).click();
        await key(page, ".6");
        await page.locator(".thumb .next").click();
        await key(page, ".3");
      },
    },
    {
      ...unit("restrictor-measured", "/restrictor", "demo:40:unit"),
      before: (page) => page.locator(".found-kinds button").nth(3).click(),
    },
  ],
  "/unit/:id/lines": [
    unit("lines", "/lines", "shots-unit"),
    {
      ...unit("lines-typed", "/lines", "demo:40:unit"),
      before: async (page) => {
        await key(page, "3.5");
        await page.locator(".thumb .next").click();
      },
    },
  ],
  "/unit/:id/try": [
    { ...unit("try", "/try"), ready: "main svg" },
    { ...unit("try-standing", "/try"), ready: "main svg", before: press(".fold") },
    { ...unit("try-recovery", "/try"), ready: "main svg", before: press(".fold >> nth=2") },
    { ...unit("try-leak", "/try"), ready: "main svg", before: press(".fold >> nth=1") },
  ],
  "/unit/:id/kitchen-day": [{ ...unit("kitchen-day", "/kitchen-day"), ready: "main .band" }],
  "/unit/:id/at/:band": ["tap", "cartridge", "element", "tank", "outlet"].map((band) =>
    unit(`at-${band}`, `/at/${band}`),
  ),
  "/unit/:id/due": [unit("due", "/due")],
  "/unit/:id/photos": [unit("photos", "/photos"), unit("photos-none", "/photos", "demo:28:unit")],
  "/unit/:id/plan": [unit("plan", "/plan")],
  "/unit/:id/move": [unit("move", "/move")],
  "/unit/:id/sticker": [unit("sticker", "/sticker")],
  "/unit/:id/claim": [unit("claim", "/claim")],
  "/unit/:id/expected": [
    unit("expected", "/expected"),
    {
      ...unit("expected-typed", "/expected"),
      before: async (page) => {
        for (const digits of ["61", "13"]) {
          await key(page, digits);
          await page.locator(".thumb .next").click();
        }
      },
    },
  ],
  "/unit/:id/points": [unit("points", "/points", "demo:40:unit")],
  "/unit/:id/start": [unit("start", "/start")],
  "/visit/:id": [
    visit("overview", ""),
    visit("overview-fresh", "", FRESH),
    visit("overview-closed", "", CLOSED),
  ],
  "/visit/:id/ask": [visit("ask", "/ask", FRESH)],
  "/visit/:id/bypass": [visit("bypass", "/bypass")],
  "/visit/:id/look": [
    visit("look", "/look"),
    { ...visit("look-not-so", "/look"), before: press("main button[aria-pressed], main .choice") },
  ],
  "/visit/:id/read/:phase/:slot": [
    visit("read-empty", "/read/asFound/deliveredTds", FRESH),
    {
      ...visit("read-typed", "/read/asFound/deliveredTds", FRESH),
      before: (page) => key(page, "128"),
    },
    {
      ...visit("read-refused", "/read/asFound/feedTemperature", FRESH),
      before: async (page) => {
        await key(page, "999");
        await page.locator(".thumb .next").click();
      },
    },
    visit("read-again", "/read/asFound/beforeFilterPressure"),
    visit("read-chlorine", "/read/asFound/chlorineAfter"),
    visit("read-photo", "/read/asLeft/permeateTds"),
    visit("stopwatch", "/read/asFound/drainFlow", FRESH),
    {
      ...visit("stopwatch-running", "/read/asFound/permeateFlow", FRESH),
      before: press(".thumb .next"),
    },
    visit("stopwatch-taken", "/read/asFound/permeateFlow"),
  ],
  "/visit/:id/also": [visit("also", "/also")],
  "/visit/:id/expected": [visit("expected", "/expected")],
  "/visit/:id/points": [visit("points", "/points", FRESH)],
  "/visit/:id/check/:check": ["complaint", "premises", "shown"].map((check) =>
    visit(`check-${check}`, `/check/${check}`, FRESH),
  ),
  "/visit/:id/drips": [visit("drips", "/drips", FRESH)],
  "/visit/:id/acceptance": [visit("acceptance", "/acceptance", FRESH)],
  "/visit/:id/noAccess": [visit("no-access", "/noAccess", FRESH)],
  "/visit/:id/timers": [visit("timers", "/timers"), visit("timers-none", "/timers", FRESH)],
  "/visit/:id/advice": [visit("advice", "/advice")],
  "/visit/:id/times": [visit("times", "/times")],
  "/visit/:id/optional": [visit("optional", "/optional")],
  "/visit/:id/judgement": [visit("judgement", "/judgement"), visit("judgement-nothing", "/judgement", FRESH)],
  "/visit/:id/work/:task": ["sanitise", "replace:carbon", "replace:element", "setAirCharge"].map((task) =>
    visit(`work-${task.replace(":", "-")}`, `/work/${encodeURIComponent(task)}`),
  ),
  "/visit/:id/cause": [
    { ...visit("cause", "/cause"), ready: ".odds-rail" },
    { ...visit("cause-open", "/cause"), ready: ".odds-rail", before: press("button.band:has(.odds-rail)") },
  ],
  "/visit/:id/cause/:test": [
    visit("cause-look", "/cause/lookAtTubing"),
    visit("cause-number", "/cause/staticPressure"),
  ],
  "/visit/:id/valves": [visit("valves", "/valves")],
  "/visit/:id/sign": [visit("sign", "/sign")],
  "/visit/:id/leave": [visit("leave", "/leave")],
  "/visit/:id/record": [
    visit("record", "/record"),
    visit("record-fresh", "/record", FRESH),
    visit("record-closed", "/record", CLOSED),
  ],
  "*": [
    { name: "gone", to: "/unit/nothing-here" },
    { name: "gone-visit", to: "/visit/nothing-here" },
    { name: "gone-nowhere", to: "/nowhere" },
  ],
};
