import type { Phone } from "./phone.ts";

/** The unit of a place of the demo book, found by its name: the list begins with the most urgent. */
export async function openUnit({ page }: Phone, place: string) {
  await page.getByLabel("Search").fill(place);
  await page
    .getByRole("link", { name: new RegExp(`^${place}`) })
    .first()
    .click();
}
