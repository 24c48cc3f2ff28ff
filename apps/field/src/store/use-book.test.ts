import "fake-indexeddb/auto";
import { createElement } from "react";
import { renderToString } from "react-dom/server";
import { expect, test } from "vitest";
import { BookProvider, useBook } from "./use-book.ts";

function Reader() {
  const { live } = useBook();
  return createElement("p", null, live.name);
}

test("until the book is open what waits is shown, and nothing below it", () => {
  const provided = { name: "use-book", waiting: () => "Opening", children: createElement(Reader) };
  expect(renderToString(createElement(BookProvider, provided))).toBe("Opening");
});

test("a screen outside of any book is a fault of ours and says so", () => {
  expect(() => renderToString(createElement(Reader))).toThrow("useBook needs a BookProvider above it");
});
