import { expect, test } from "vitest";
import type { Change } from "../change.ts";
import type { ChangeStore } from "../change-store.ts";

/** A change for tests; `over` fields replace the usual ones. */
export const sampleChange = (id: string, fields: Partial<Change> = {}): Change => ({
  id,
  record: "site-1",
  kind: "site",
  fields: { name: id },
  at: "2026-03-02T08:00:00.000Z/0000",
  device: "phone-1",
  schema: 1,
  ...fields,
});

/** What every store of changes keeps to. */
export function storeContract(name: string, open: () => Promise<ChangeStore>): void {
  test(`${name}: gives back what was appended, unknown members too`, async () => {
    const store = await open();
    const odd = { ...sampleChange("b"), later: { kept: ["verbatim"] } };
    expect(await store.append([sampleChange("a"), odd])).toEqual({ kind: "known", value: { added: 2 } });
    const all = await store.all();
    expect(all.kind === "known" && new Set(all.value)).toEqual(new Set([sampleChange("a"), odd]));
  });

  test(`${name}: passes over what it already keeps`, async () => {
    const store = await open();
    await store.append([sampleChange("a")]);
    const again = await store.append([sampleChange("a"), sampleChange("b"), sampleChange("b")]);
    expect(again).toEqual({ kind: "known", value: { added: 1 } });
  });

  test(`${name}: refuses an id that comes back with another content, and keeps nothing of that batch`, async () => {
    const store = await open();
    await store.append([sampleChange("a")]);
    const clash = await store.append([sampleChange("c"), sampleChange("a", { fields: { name: "other" } })]);
    expect(clash).toMatchObject({ kind: "refused", code: "id-reused" });
    const all = await store.all();
    expect(all).toEqual({ kind: "known", value: [sampleChange("a")] });
  });

  test(`${name}: tells a subscriber of every new change once, until it leaves`, async () => {
    const store = await open();
    const heard: string[] = [];
    const leave = store.subscribe((changes) => heard.push(...changes.map((change) => change.id)));
    await store.append([sampleChange("a")]);
    await store.append([sampleChange("a"), sampleChange("b")]);
    leave();
    await store.append([sampleChange("c")]);
    expect(heard).toEqual(["a", "b"]);
  });
}
