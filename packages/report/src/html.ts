import { escapeText } from "@tapside/pictures";
import type { Messages } from "@tapside/words";
import { messagesIn } from "@tapside/words/every-language";
import type { Block, CellMark, ReadingCell, RecordContent } from "./block.ts";

/** The service record as one page of HTML that needs nothing else: to mail, to read aloud, to print. */
export function recordHtml(content: RecordContent, mark: string): string {
  const { language, record: words } = messagesIn(content.language);
  const title = escapeText(`${content.title}, ${content.subtitle}`);
  return `<!doctype html>
<html lang="${escapeText(language)}"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>${title}</title>
<style>${STYLE}</style>
<h1>${escapeText(content.title)}</h1>
<p>${escapeText(content.subtitle)}</p>
<p>${content.aside.map(escapeText).join("<br>")}</p>
${content.blocks.map((block) => blockHtml(block, words)).join("\n")}
<p class="quiet"><code>${escapeText(words.wholeMark(mark))}</code></p>
</html>
`;
}

const STYLE =
  "body{font:1rem/1.4 B612,system-ui,sans-serif;max-width:46rem;margin:2rem auto;padding:0 1rem;color:#0D1518}table{border-collapse:collapse;width:100%}th,td{border-top:1px solid;padding:.4rem;text-align:left;vertical-align:top}td.number{text-align:right;font-size:1.3rem}.quiet,small{color:#39454A}code{overflow-wrap:anywhere}svg{max-width:100%;height:8rem}";

const blockHtml = <K extends Block["kind"]>(block: Extract<Block, { kind: K }>, words: Words): string =>
  (HTML[block.kind] as (block: Block, words: Words) => string)(block, words);

type Words = Messages["record"];

const HTML: { readonly [K in Block["kind"]]: (block: Extract<Block, { kind: K }>, words: Words) => string } =
  {
    heading: ({ text }) => `<h2>${escapeText(text)}</h2>`,
    paragraph: ({ text, strong, quiet }) =>
      `<p${quiet ? ' class="quiet"' : ""}>${strong ? `<strong>${escapeText(text)}</strong>` : escapeText(text)}</p>`,
    list: ({ title, items }) =>
      items.length === 0
        ? ""
        : `<h2>${escapeText(title)}</h2><ul>${items.map((item) => `<li>${escapeText(item)}</li>`).join("")}</ul>`,
    figure: ({ svg }) => svg,
    signature: ({ text, path }, words) =>
      `<p>${escapeText(text)}</p>${path ? `<svg viewBox="0 0 358 120" role="img" aria-label="${words.says.signature}"><path d="${escapeText(path)}" fill="none" stroke="#0D1518" stroke-width="3"/></svg>` : ""}`,
    readings: ({ head, rows }, words) =>
      `<table><thead><tr>${head.map((text) => `<th scope="col">${escapeText(text)}</th>`).join("")}</tr></thead><tbody>${rows
        .map(
          (row) =>
            `<tr><th scope="row">${escapeText(row.title)}<br><small>${escapeText(row.note)}</small></th>${cell(row.asFound, words)}${cell(row.asLeft, words)}<td>${escapeText(row.limit)}</td></tr>`,
        )
        .join("")}</tbody></table>`,
    newPage: () => "<hr>",
  };

const SIGNS: Readonly<Record<CellMark, string>> = {
  none: "",
  outside: "▶ ",
  notExpected: "▷ ",
  tooClose: "",
};

const cell = ({ text, mark }: ReadingCell, words: Words): string =>
  `<td class="number">${escapeText(text)}${mark === "none" ? "" : `<br><small>${SIGNS[mark]}${words.marks[mark]}</small>`}</td>`;
