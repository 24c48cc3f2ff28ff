/** A point left open at a visit; it comes back until closed or refused by a named person. */
export interface OpenPoint {
  readonly unit: string;
  readonly openedVisit: string;
  readonly code: string;
  readonly detail?: string;
  readonly owner?: string;
  readonly due?: string;
  /** The person was asked on the telephone. */
  readonly byPhone?: boolean;
  /** What was decided about an advice that was not refused. */
  readonly agreed?: "accepted" | "undecided";
  readonly closedVisit?: string;
  readonly closedOn?: string;
  readonly refusedBy?: string;
  readonly refusedRole?: string;
  readonly refusedOn?: string;
  readonly refusedVisit?: string;
  /** The words the person used. */
  readonly refusedWords?: string;
  /** Looked at again and left open. */
  readonly keptVisit?: string;
  readonly keptOn?: string;
  readonly keptReason?: string;
}

/** A frozen service record: `json` is the canonical text whose SHA-256 is `mark`. */
export interface ServiceRecordEntry {
  readonly visit: string;
  readonly unit: string;
  readonly revision: number;
  readonly mark: string;
  readonly json: string;
  readonly issuedAt: string;
}
