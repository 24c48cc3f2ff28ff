/**
 * Hands a text to the phone: its share sheet, else its clipboard. "shared", "copied", "calledOff" by the person, or "neither"
 * where the phone allows nothing.
 */
export async function handOverText(text: string): Promise<"shared" | "copied" | "calledOff" | "neither"> {
  if (navigator.share) {
    try {
      await navigator.share({ text });
      return "shared";
    } catch (error) {
      if ((error as DOMException).name === "AbortError") return "calledOff";
    }
  }
  try {
    await navigator.clipboard.writeText(text);
    return "copied";
  } catch {
    return "neither";
  }
}
