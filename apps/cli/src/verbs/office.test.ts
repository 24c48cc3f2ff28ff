import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { CliIo } from "../command-verb.ts";
import { runCli } from "../run.ts";

/** A machine whose new files are held in memory. */
function machine() {
  const files = new Map<string, string | Uint8Array>();
  const printed: string[] = [];
  const complaints: string[] = [];
  const read = (path: string) => files.get(path) ?? readFileSync(path);
  const io: CliIo = {
    readText: (path) => new TextDecoder().decode(bytesOf(read(path))),
    readBytes: (path) => bytesOf(read(path)),
    writeText: (path, text) => files.set(path, text),
    writeBytes: (path, bytes) => files.set(path, bytes),
    print: (line) => printed.push(line),
    complain: (line) => complaints.push(line),
  };
  return { io, files, printed, complaints };
}

const bytesOf = (data: string | Uint8Array) =>
  typeof data === "string" ? new TextEncoder().encode(data) : new Uint8Array(data);

test("a list becomes a book; taken into it again it changes nothing; bad rows give exit code 1 and a reason", async () => {
  const { io, files, printed, complaints } = machine();
  expect(await runCli(["import", "examples/sites.csv", "-o", "a.json"], io)).toBe(0);
  expect(await runCli(["import", "examples/sites.csv", "--into", "a.json", "-o", "b.json"], io)).toBe(0);
  expect(printed).toEqual([
    "2 new sites, 4 new units, 0 already there",
    "0 new sites, 0 new units, 4 already there",
  ]);
  expect(files.get("b.json")).toBe(files.get("a.json"));
  files.set("bad.csv", 'site,tank_L\nElm,53\nOak,lots\nAsh,"5');
  expect(await runCli(["import", "bad.csv"], io)).toBe(1);
  expect(complaints).toEqual([
    'line 3 refused: tank_L: "lots" is not a number.',
    "line 4 refused: A quote is opened and never closed; what follows it is not read.",
  ]);
  files.set("foreign.csv", "name,tank\nElm,53");
  expect(await runCli(["import", "foreign.csv"], io)).toBe(2);
});

test("due, calendar and tables come from the same book", async () => {
  const { io, printed } = machine();
  const book = "examples/larkmoor.tapside.json";
  expect(await runCli(["due", book, "--on", "2026-11-25", "--json"], io)).toBe(0);
  const { rows } = JSON.parse(printed.pop()!) as { rows: { reasons: { on?: string }[] }[] };
  expect(rows.length).toBeGreaterThanOrEqual(10);
  expect(await runCli(["calendar", book, "--on", "2026-11-25"], io)).toBe(0);
  const days = rows.flatMap((row) => new Set(row.reasons.flatMap((one) => one.on ?? [])).size);
  const events = printed.pop()!.match(/BEGIN:VEVENT/g)?.length ?? 0;
  expect(events).toBe(days.reduce((sum, one) => sum + one, 0));
  expect(await runCli(["due", book, "--on", "soon"], io)).toBe(2);
});

test("the claim file is a PDF and the data under its mark", async () => {
  const { io, files } = machine();
  await runCli(["import", "examples/sites.csv", "-o", "a.json"], io);
  expect(
    await runCli(["claim", "a.json", "--unit", "WB-2", "-o", "claim.pdf", "--on", "2026-11-25"], io),
  ).toBe(0);
  expect(new TextDecoder("latin1").decode(bytesOf(files.get("claim.pdf")!)).slice(0, 5)).toBe("%PDF-");
  const data = JSON.parse(String(files.get("claim.json"))) as {
    content: { inputs: { unit: { serial: string } } };
  };
  expect(data.content.inputs.unit.serial).toBe("WB-2");
  expect(await runCli(["claim", "a.json", "--unit", "none", "-o", "x.pdf"], io)).toBe(2);
});

test("a unit is named as due prints it, or not at all where there is only one; of several alike the choices are told", async () => {
  const { io, complaints } = machine();
  const claim = (file: string, ...unit: string[]) =>
    runCli(["claim", `examples/${file}`, ...unit, "-o", "c.pdf"], io);
  expect(await claim("one-visit.tapside.json")).toBe(0);
  expect(await claim("larkmoor.tapside.json", "--unit", "Tarn Hill primary, Unit 1")).toBe(0);
  expect(await claim("larkmoor.tapside.json", "--unit", "Unit 3")).toBe(2);
  expect(complaints.pop()).toMatch(/^Several units: .*Eddis Hill secondary, Unit 3/);
  expect(await claim("larkmoor.tapside.json", "--unit", "Unit 9", "--language", "es")).toBe(2);
  expect(complaints.pop()).toMatch(/^No hay ningún equipo «Unit 9» .* más\.$/);
});

test("a roll has one page a sticker", async () => {
  const { io, files, printed } = machine();
  const url = ["--url", "https://tap.example/"];
  expect(await runCli(["stickers", "--new", "3", ...url, "-o", "roll.pdf"], io)).toBe(0);
  const pdf = new TextDecoder("latin1").decode(bytesOf(files.get("roll.pdf")!));
  expect(pdf.match(/\/Type \/Page\b/g)).toHaveLength(3);
  expect(printed).toHaveLength(3);
  expect(await runCli(["stickers", "--new", "0", ...url, "-o", "roll.pdf"], io)).toBe(2);
});

test("the kitchen gets its card before any visit, its page after one, in the language asked for", async () => {
  const { io, files, complaints } = machine();
  await runCli(["import", "examples/sites.csv", "-o", "a.json"], io);
  const wanted = ["a.json", "--unit", "WB-2", "-o", "k.pdf"];
  expect(await runCli(["kitchen", "card", ...wanted, "--on", "2026-11-25T08:00Z"], io)).toBe(0);
  expect(new TextDecoder("latin1").decode(bytesOf(files.get("k.pdf")!))).toContain("/Lang (en)");
  expect(await runCli(["kitchen", "page", ...wanted], io)).toBe(2);
  expect(complaints.pop()).toBe("The unit has no visit yet: there is nothing to say of its water.");
  const demo = ["examples/larkmoor.tapside.json", "--unit", "demo:1:unit", "-o", "p.pdf", "--language", "es"];
  expect(await runCli(["kitchen", "page", ...demo], io)).toBe(0);
  expect(new TextDecoder("latin1").decode(bytesOf(files.get("p.pdf")!))).toContain("/Lang (es)");
});

test("what is due, its calendar, an import and a check of marks speak Spanish when asked", async () => {
  const { io, files, printed, complaints } = machine();
  const said = async (...args: string[]) => {
    printed.length = 0;
    complaints.length = 0;
    await runCli([...args, "--language", "es"], io);
    return [...printed, ...complaints].join("\n");
  };
  const book = "examples/larkmoor.tapside.json";
  const english = /\b(?:due|since|carry|cartridge|sites|refused|line|sound|records|again|visit)\b/i;
  const due = await said("due", book, "--on", "2026-11-25");
  expect(due).toMatch(/elemento de membrana, vence/i);
  expect(due).toMatch(/llevar \d+ × cartucho de carbón/i);
  expect(due).not.toMatch(english);
  const reasons = (await said("calendar", book, "--on", "2026-11-25"))
    .split("\n")
    .filter((line) => line.startsWith("DESCRIPTION"));
  expect(reasons.length).toBeGreaterThan(10);
  expect(reasons.join("\n")).toMatch(/vence/);
  expect(reasons.join("\n")).not.toMatch(english);
  for (const verb of ["month", "van", "likely"])
    expect(await said(verb, book, "--on", "2026-11-25"), verb).not.toMatch(
      /\b(?:over|stops|visits|parts|open|within|van|nothing|points|overdue|ordered)\b/i,
    );
  expect(await said("likely", book, "--on", "2026-11-25")).toMatch(/ en \d+ paradas/);
  const among = /\b(?:reads?|its|others|agrees|lines|alarms|too few|no counter|is not|refused)\b/i;
  expect(await said("neighbours", book)).toMatch(/otros [\d, ]+: (?:lee|sus|un vecino) /);
  expect(await said("meters", book)).toMatch(/\d+ líneas, .*\(-?\d+,\d ± \d+,\d %\)/);
  files.set("log.csv", "time,value,unit,colour\n2026-11-20 08:00,1.5,ppm,red\n2026-11-21 08:00,lots,ppm,red");
  expect(await said("sensor", "log.csv")).toMatch(
    /1 líneas, .*de 1,5 a 1,5 ppm.*\n.*columna colour no se toma\n.*línea 3/s,
  );
  expect(await said("use", book)).toMatch(/contador/);
  for (const asked of [
    ["neighbours", book],
    ["meters", book],
    ["sensor", "log.csv"],
    ["use", book],
  ])
    expect((await said(...asked)).replaceAll("Meter of", ""), asked[0]).not.toMatch(among);
  files.set("bad.csv", "site,tank_L,colour\nElm,53,red\nOak,lots,red");
  const list = await said("import", "bad.csv");
  expect(list).toMatch(/1 sitios nuevos, 1 equipos nuevos, 0 ya estaban/);
  expect(list).toMatch(/la columna colour no se toma/);
  expect(list).toMatch(/línea 3 rechazada: tank_L: .*no es un número/);
  expect(await said("verify", book)).toMatch(/íntegro .* visita .*juzgado de nuevo: igual/);
  expect(await said("verify", "bad.csv")).not.toMatch(/\bThe\b|\bnot\b/);
  expect(await runCli(["due", book, "--language", "xx"], io)).toBe(2);
});
