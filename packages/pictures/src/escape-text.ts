const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Text made safe inside SVG text and attributes. */
export const escapeText = (text: string): string => text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]!);
