import type { UnitFile } from "./book.ts";

/** How a unit is called among those of other sites: the site's name and its own. */
export const unitTitle = ({ site, unit }: Pick<UnitFile, "site" | "unit">): string =>
  [site.name, unit.name].filter(Boolean).join(", ");
