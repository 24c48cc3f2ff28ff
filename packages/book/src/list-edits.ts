import type { Book, FieldValue, KindId } from "@tapside/records";
import type { ListColumn, ListPreview, ListRow } from "./list-preview.ts";
import { readSticker } from "./sticker-code.ts";

/** One record to write. */
export interface ListEdit {
  readonly kind: KindId;
  readonly record: string;
  readonly fields: Readonly<Record<string, FieldValue>>;
}

interface Result {
  readonly edits: readonly ListEdit[];
  readonly newSites: number;
  readonly newUnits: number;
  /** Units that are in the book already, by serial number or by site and name; they stay as they are. */
  readonly knownUnits: number;
}

/**
 * What taking a list in would write. A site is the same by its code, else by its name; a unit by its serial number, else by
 * site and name. What the book knows already is left alone. `newId` gives an id for each new record.
 */
export function listEdits(book: Book, preview: ListPreview, newId: (key: string) => string): Result {
  const sites = knownSites(book);
  const units = knownUnits(book);
  const edits: ListEdit[] = [];
  const count = { newSites: 0, newUnits: 0, knownUnits: 0 };
  for (const { values } of preview.rows) {
    const names = siteNames(values);
    let site = names.map((name) => sites.get(name)).find(Boolean);
    if (!site) {
      site = newId(`site ${names[0]}`);
      edits.push(...siteEdits(values, site, newId));
      count.newSites++;
    }
    for (const name of names) sites.set(name, site);
    if (!hasUnit(values)) continue;
    const keys = unitKeys(values, site);
    if (keys.some((key) => units.has(key))) count.knownUnits++;
    else {
      edits.push(...unitEdits(values, site, keys[0]!, newId));
      count.newUnits++;
    }
    for (const key of keys) units.add(key);
  }
  return { edits, ...count };
}

type Values = ListRow["values"];

const siteNames = ({ site, site_code: code }: Values): readonly string[] =>
  code === undefined
    ? [`name ${site}`.toLowerCase()]
    : [`code ${code}`.toLowerCase(), `name ${site} ${code}`.toLowerCase()];

function knownSites(book: Book): Map<string, string> {
  return new Map(
    [...book.site.values()].flatMap((site) =>
      siteNames({ site: site.name ?? "", ...(site.code && { site_code: site.code }) }).map(
        (name) => [name, site.id] as const,
      ),
    ),
  );
}

const UNIT_COLUMNS: readonly ListColumn[] = [
  "unit",
  "serial",
  "permeate_L_h",
  "tank_L",
  "sticker",
  "fitted_on",
];
const hasUnit = (values: Values): boolean => UNIT_COLUMNS.some((column) => values[column] !== undefined);

const unitKeys = ({ unit, serial }: Values, site: string): readonly string[] => [
  ...(serial === undefined ? [] : [`serial ${serial}`.toLowerCase()]),
  ...(unit === undefined && serial !== undefined ? [] : [`${site} ${unit ?? "Unit 1"}`.toLowerCase()]),
];

function knownUnits(book: Book): Set<string> {
  return new Set(
    [...book.unit.values()].flatMap((unit) => {
      const site = book.point.get(unit.point ?? "")?.site ?? "";
      return unitKeys({ unit: unit.name ?? "", ...(unit.serial && { serial: unit.serial }) }, site);
    }),
  );
}

/** Fields that are there, under the names the book keeps them by. */
const pick = (values: Values, names: Readonly<Record<string, ListColumn>>) =>
  Object.fromEntries(
    Object.entries(names).flatMap(([field, column]) =>
      values[column] === undefined ? [] : [[field, values[column] as FieldValue]],
    ),
  );

function siteEdits(values: Values, site: string, newId: (key: string) => string): readonly ListEdit[] {
  const fields = pick(values, {
    name: "site",
    code: "site_code",
    chain: "chain",
    address: "address",
    altitudeM: "altitude_m",
    waterSource: "water_source",
    askName: "ask_name",
    askRole: "ask_role",
    askPhone: "ask_phone",
    key: "key",
    hours: "hours",
  });
  const own: ListEdit = { kind: "site", record: site, fields };
  if (values.owner === undefined) return [own];
  const ownership = { site, owner: values.owner, since: EVER };
  return [own, { kind: "ownership", record: newId(`owner ${site}`), fields: ownership }];
}

const EVER = "1980-01-01";

function unitEdits(
  values: Values,
  site: string,
  key: string,
  newId: (key: string) => string,
): readonly ListEdit[] {
  const [point, unit] = [newId(`point ${key}`), newId(`unit ${key}`)];
  const sticker = values.sticker === undefined ? undefined : readSticker(`${values.sticker}`);
  const place = pick(values, {
    where: "where",
    isolationValve: "isolation_valve",
    drain: "drain",
    bypassFitted: "bypass",
  });
  const plate = pick(values, {
    serial: "serial",
    fittedOn: "fitted_on",
    ratedPermeateLPerH: "permeate_L_h",
    ratedRejectLPerH: "drain_L_h",
    ratedRecoveryPercent: "recovery_percent",
    ratedRejectionPercent: "rejection_percent",
    testPressureKPaGauge: "test_pressure_kPa",
    testTemperatureC: "test_temperature_C",
    testFeedMgPerL: "test_feed_mg_L",
    tankL: "tank_L",
    restrictorKind: "restrictor_kind",
    restrictorLPerH: "restrictor_L_h",
    restrictorAtKPaGauge: "restrictor_at_kPa",
    restrictorLaw: "restrictor_law",
    restrictorAtC: "restrictor_at_C",
    restrictorBoreMm: "restrictor_bore_mm",
    restrictorLengthM: "restrictor_length_m",
    feedTubeLengthM: "feed_tube_length_m",
    feedTubeBoreMm: "feed_tube_bore_mm",
    permeateTubeLengthM: "permeate_tube_length_m",
    permeateTubeBoreMm: "permeate_tube_bore_mm",
    drainTubeLengthM: "drain_tube_length_m",
    drainTubeBoreMm: "drain_tube_bore_mm",
    outletTubeLengthM: "outlet_tube_length_m",
    outletTubeBoreMm: "outlet_tube_bore_mm",
  });
  return [
    { kind: "point", record: point, fields: { site, name: values.place ?? "Kitchen", ...place } },
    {
      kind: "unit",
      record: unit,
      fields: {
        point,
        name: values.unit ?? values.serial ?? "Unit 1",
        ...plate,
        ...(sticker?.kind === "known" && { sticker: sticker.value }),
      },
    },
    ...partEdits(values, unit, newId),
    ...applianceEdits(values, site, point, newId),
  ];
}

const CHAIN: readonly (readonly [role: string, names: Readonly<Record<string, ListColumn>>])[] = [
  ["sediment", { fittedOn: "sediment_fitted_on" }],
  ["carbon", { fittedOn: "carbon_fitted_on", ratedLitres: "carbon_rated_L", lot: "carbon_lot" }],
  ["element", { fittedOn: "element_fitted_on", serial: "element_serial" }],
];

const partEdits = (values: Values, unit: string, newId: (key: string) => string): readonly ListEdit[] =>
  CHAIN.map(([role, names], i) => ({
    kind: "part",
    record: newId(`part ${unit} ${role}`),
    fields: { unit, role, position: i + 1, ...pick(values, names) },
  }));

function applianceEdits(
  values: Values,
  site: string,
  point: string,
  newId: (key: string) => string,
): readonly ListEdit[] {
  if (values.appliance === undefined) return [];
  const fields = { site, point, name: values.appliance, type: values.appliance_type ?? "other" };
  return [{ kind: "appliance", record: newId(`appliance ${point}`), fields }];
}
