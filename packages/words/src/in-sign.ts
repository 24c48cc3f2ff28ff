/** A number's text, as typed or as made, in the decimal sign it is to be shown with. */
export const inSign = (number: string, decimalSign: "." | ","): string => number.replace(/[.,]/, decimalSign);
