/** Spanish-speaking countries that write a comma; the others, and "es-419", write a point. Source: Unicode CLDR, numbers of "es" and its regions. */
const COMMA = ["ES", "AR", "BO", "CL", "CO", "CR", "EC", "GQ", "PY", "UY", "VE"];

/** The sign a phone of this language tag writes, for the languages known here: "es-CO" a comma, "es-MX" and "en" a point. */
export function decimalSignOfTag(tag: string): "." | "," {
  const { language, region } = new Intl.Locale(tag);
  return language === "es" && COMMA.includes(region ?? "ES") ? "," : ".";
}

/** The sign numbers are shown with: as set in this book, else as the phone's own language writes it. Both are taken in typing. */
export const decimalSignOf = (settings: { readonly decimalSign?: "." | "," } | undefined): "." | "," =>
  settings?.decimalSign ?? decimalSignOfTag(navigator.language);
