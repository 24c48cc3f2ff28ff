import type { Book, Kept, Part, UnitFile } from "@tapside/records";
import { codeOfUnit } from "./sticker-code.ts";

/** Everything a unit can be found by, in small letters: site, code, chain, people, place, serial numbers, lots, appliances. */
export function searchText(file: UnitFile, owners: readonly string[] = []): string {
  const { site, point, unit } = file;
  const own = [site.name, site.code, site.chain, site.address, site.askName, site.askPhone, site.waterSource];
  const place = [
    point.name,
    point.where,
    unit.storedAt,
    unit.name,
    unit.serial,
    unit.sticker ?? codeOfUnit(unit.id),
  ];
  const parts = file.parts.flatMap((part) => [part.serial, part.lot]);
  const names = file.appliances.map((one) => one.name);
  return plain([...own, ...place, ...parts, ...names, ...owners].filter(Boolean).join(" "));
}

/** Small letters without accents, so that "creche" finds "Crèche". */
const plain = (text: string): string => text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase();

/** Those whose text holds every word of the query. */
export function unitsFound<T extends { readonly text: string }>(
  all: readonly T[],
  query: string,
): readonly T[] {
  const words = plain(query).split(/\s+/).filter(Boolean);
  return words.length === 0 ? all : all.filter(({ text }) => words.every((word) => text.includes(word)));
}

/** A part found by its lot or serial number, with where it is or was. */
export interface PartHit {
  readonly part: Kept<Part>;
  readonly unit: string;
  readonly inService: boolean;
}

/** "Where is lot X?": every part of that lot or serial number, those in service first. */
export function whereIs(book: Book, text: string): readonly PartHit[] {
  const wanted = plain(text.trim());
  if (wanted.length < 2) return [];
  return [...book.part.values()]
    .filter((part) => [part.lot, part.serial].some((mark) => mark && plain(mark).includes(wanted)))
    .map((part) => ({ part, unit: part.unit ?? "", inService: !part.removedOn }))
    .sort((a, b) => Number(b.inService) - Number(a.inService) || (a.part.id < b.part.id ? -1 : 1));
}
