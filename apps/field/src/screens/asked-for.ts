let asked = "";

/** What was typed into the search while the book was being opened, for the screen that takes over. */
export const askedFor = {
  keep: (text: string): void => {
    asked = text;
  },
  take: (): string => {
    const text = asked;
    asked = "";
    return text;
  },
};
