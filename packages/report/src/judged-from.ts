import { canonicalJson, type KeptVisit, sha256Hex, type UnitFile } from "@tapside/records";

/**
 * The part of the records a judgement rests on, without telephone numbers and drawn names. This visit, the unit's first
 * and those it compares with stand whole; the others by the mark of their text, so that a record does not grow with every year.
 */
export function judgedFrom(file: UnitFile, visitId: string, standsOn: readonly string[]): unknown {
  const here = file.visits.findIndex((visit) => visit.id === visitId);
  const { askPhone: _phone, notes: _notes, ...site } = file.site;
  return {
    site,
    point: file.point,
    unit: file.unit,
    appliances: file.appliances,
    parts: file.parts,
    instruments: [...file.instruments.values()].sort((a, b) => (a.id < b.id ? -1 : 1)),
    ...(file.analyses && file.analyses.length > 0 && { analyses: file.analyses }),
    openPoints: file.openPoints,
    visits: file.visits
      .slice(0, here + 1)
      .map((visit, i) =>
        i === 0 || i === here || standsOn.includes(visit.id) ? unsigned(visit) : marked(visit),
      ),
  };
}

const unsigned = ({ answers: { signature: _, ...answers }, ...visit }: KeptVisit) => ({ ...visit, answers });

const marked = (visit: KeptVisit) => ({
  id: visit.id,
  startedAt: visit.startedAt,
  mark: sha256Hex(canonicalJson(unsigned(visit))),
});
