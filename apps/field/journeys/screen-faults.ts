import type { Page } from "playwright";

/**
 * What is wrong with the screen as it stands, a line each: wider than the phone, text cut, text over text, targets under 48 px or over
 * one another, text under 16 px, an end that the thumb zone covers. Empty when all is well.
 */
export const screenFaults = (page: Page): Promise<string[]> => page.evaluate(lookForFaults);

/** Runs in the page and stands alone: nothing outside of it can be seen there. */
function lookForFaults(): string[] {
  const wide = document.documentElement.clientWidth;
  const faults: string[] = [];
  /** A list to choose from shows what is cut when it is opened; with the usual size of text nothing may be. */
  const usual = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) < 20;
  const nameOf = (one: Element) =>
    `<${one.tagName.toLowerCase()} ${one.getAttribute("class") ?? ""}> "${(one.textContent ?? "").trim().slice(0, 40)}"`;
  const shown = (one: Element) =>
    one.checkVisibility({ checkOpacity: true, checkVisibilityCSS: true }) && !one.closest(".unseen");
  const fixed = (one: Element) => {
    for (let up: Element | null = one; up; up = up.parentElement)
      if (/fixed|sticky/.test(getComputedStyle(up).position)) return up;
    return null;
  };
  const all = [...document.querySelectorAll<HTMLElement>("body *")].filter(
    (one) => !one.closest("svg") && shown(one),
  );

  if (document.documentElement.scrollWidth > wide + 0.5)
    faults.push(`scrolls sideways by ${document.documentElement.scrollWidth - wide}`);
  for (const one of all) {
    const box = one.getBoundingClientRect();
    if (box.width > 0 && (box.right > wide + 1 || box.left < -1) && one.textContent?.trim())
      faults.push(`beyond the edge: ${nameOf(one)} ${box.left.toFixed(0)}–${box.right.toFixed(0)}`);
    const { overflowX, overflowY } = getComputedStyle(one);
    const cut =
      (/hidden|clip/.test(overflowX) && one.scrollWidth > one.clientWidth + 1) ||
      (/hidden|clip/.test(overflowY) && one.scrollHeight > one.clientHeight + 2);
    // A hint that is shortened by an ellipsis and stands in full elsewhere on the screen is not lost.
    const inFull = () =>
      getComputedStyle(one).webkitLineClamp !== "none" &&
      (document.querySelector("main")?.textContent ?? "").includes(one.textContent?.trim() ?? "");
    if (cut && one.textContent?.trim() && !inFull())
      faults.push(
        `cut: ${nameOf(one)} ${one.scrollWidth}×${one.scrollHeight} in ${one.clientWidth}×${one.clientHeight}`,
      );
    const chosen = one instanceof HTMLSelectElement && usual ? one.selectedOptions[0]?.textContent : "";
    if (chosen) {
      const pen = document.createElement("canvas").getContext("2d")!;
      pen.font = getComputedStyle(one).font;
      if (pen.measureText(chosen).width + 20 > one.clientWidth + 1) faults.push(`cut choice: "${chosen}"`);
    }
  }

  const targets = all.filter((one) => one.matches("button, a, input:not(.unseen), select, textarea"));
  for (const one of targets) {
    const box = one.getBoundingClientRect();
    if (box.width > 1 && (box.width < 47.5 || box.height < 47.5))
      faults.push(`target under 48 px: ${nameOf(one)} ${box.width.toFixed(0)}×${box.height.toFixed(0)}`);
  }
  const crossing = (a: DOMRect, b: DOMRect) =>
    [
      Math.min(a.right, b.right) - Math.max(a.left, b.left),
      Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top),
    ] as const;
  for (const [i, one] of targets.entries())
    for (const other of targets.slice(i + 1)) {
      if (one.contains(other) || other.contains(one) || fixed(one) !== fixed(other)) continue;
      // The stopwatch stops at a touch anywhere else.
      if (one.matches(".stopwatch-face")) continue;
      const [x, y] = crossing(one.getBoundingClientRect(), other.getBoundingClientRect());
      if (x > 2 && y > 2) faults.push(`targets over one another: ${nameOf(one)} and ${nameOf(other)}`);
    }

  const words: { node: Text; box: DOMRect; holder: Element }[] = [];
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  for (let node = walk.nextNode() as Text | null; node; node = walk.nextNode() as Text | null) {
    const holder = node.parentElement;
    if (
      !holder ||
      !node.data.trim() ||
      holder.closest("option, script, style, symbol, defs") ||
      !shown(holder)
    )
      continue;
    if (!holder.closest("svg") && Number.parseFloat(getComputedStyle(holder).fontSize) < 15.9)
      faults.push(`text under 16 px: ${nameOf(holder)}`);
    const range = document.createRange();
    range.selectNodeContents(node);
    const lines = range.getClientRects();
    if (lines.length > 5 && node.data.trim().length / lines.length < 4)
      faults.push(`squeezed: "${node.data.trim().slice(0, 40)}" in ${lines.length} lines`);
    for (const box of lines) if (box.width > 1 && box.height > 1) words.push({ node, box, holder });
    const picture = holder.closest("svg");
    const edge = picture?.getBoundingClientRect();
    const box = range.getBoundingClientRect();
    if (
      edge &&
      (box.right > wide + 1 || box.left < -1 || box.right > edge.right + 2 || box.left < edge.left - 2)
    )
      faults.push(`cut in a picture: "${node.data.trim().slice(0, 40)}"`);
  }
  for (const [i, one] of words.entries())
    for (const other of words.slice(i + 1)) {
      if (one.node === other.node || fixed(one.holder) !== fixed(other.holder)) continue;
      const [x, y] = crossing(one.box, other.box);
      if (x > 2 && y > 6)
        faults.push(
          `text over text: "${one.node.data.trim().slice(0, 30)}" and "${other.node.data.trim().slice(0, 30)}"`,
        );
    }

  const thumb = document.querySelector(".thumb")?.getBoundingClientRect();
  const end = document.querySelector("main")?.lastElementChild?.getBoundingClientRect();
  if (thumb && end) {
    const left = document.documentElement.scrollHeight - innerHeight - scrollY;
    const under = end.bottom - left - thumb.top;
    if (under > 1) faults.push(`the end lies ${under.toFixed(0)} px under the thumb zone`);
  }
  return [...new Set(faults)];
}
