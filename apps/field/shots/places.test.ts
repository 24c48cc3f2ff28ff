import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { PLACES } from "./places.ts";

const SOURCES = fileURLToPath(new URL("../src/", import.meta.url));

/** Patterns as the routers spell them. */
const routes = [
  ...new Set(
    readdirSync(SOURCES, { recursive: true, encoding: "utf8" })
      .filter((file) => file.endsWith(".tsx"))
      .flatMap((file) => [...readFileSync(`${SOURCES}${file}`, "utf8").matchAll(/<Route\s+path="([^"]+)"/g)])
      .map(([, path]) => path!),
  ),
].sort();

describe("the picture book", () => {
  it("has a place for every route of the app, and none for a route that is gone", () => {
    expect(routes.length).toBeGreaterThan(50);
    const pictured = Object.keys(PLACES).filter((path) => path !== "*");
    expect(pictured.sort()).toEqual(routes);
  });

  it("gives no name twice", () => {
    const names = Object.values(PLACES).flatMap((places) => places.map(({ name }) => name));
    expect(new Set(names).size).toBe(names.length);
  });
});
