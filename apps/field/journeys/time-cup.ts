import type { Phone } from "./phone.ts";
import { shoot } from "./shoot.ts";

/** A timed cup: start, cup full, next. The clock of the page is moved on instead of waited for. */
export async function timeCup(phone: Phone, seconds: number, shot?: string) {
  const { page } = phone;
  await page.evaluate(() => {
    const w = window as unknown as { shiftMs?: number; realNow?: () => number };
    w.realNow ??= Date.now.bind(Date);
    w.shiftMs ??= 0;
    Date.now = () => w.realNow!() + w.shiftMs!;
  });
  await phone.tap(/^Start/);
  await page.evaluate((ms) => {
    (window as unknown as { shiftMs: number }).shiftMs += ms;
  }, seconds * 1000);
  await page.waitForTimeout(150);
  if (shot) await shoot(phone, shot);
  await phone.tap(/^Cup full/);
  await phone.tap(/^Next/);
}
