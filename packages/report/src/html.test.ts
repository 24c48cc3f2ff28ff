import { expect, it } from "vitest";
import { recordHtml } from "./html.ts";
import { demoRecord } from "./test-support/demo-record.ts";

it("names that look like markup stay names", () => {
  const content = demoRecord(1, (file) => ({ ...file, site: { ...file.site, name: "<script>x</script>" } }));
  const page = recordHtml(content, "ab12");
  expect(page).not.toContain("<script>");
  expect(page).toContain("&lt;script&gt;");
});

it("has one table with scoped headings and needs nothing from elsewhere", () => {
  const page = recordHtml(demoRecord(2), "ab12");
  expect(page.match(/<table>/g)).toHaveLength(1);
  expect(page.match(/scope="row"/g)).toHaveLength(13);
  expect(page.replaceAll("http://www.w3.org/2000/svg", "")).not.toMatch(/https?:|src=|@import/);
});
