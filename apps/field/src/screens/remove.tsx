import { type Book, GONE, type KindId } from "@tapside/records";
import { useLocation } from "wouter";
import { Band } from "../look/band.tsx";
import { useBook } from "../store/use-book.ts";
import { bookWords as words } from "../words/book.ts";

interface RemoveProps {
  readonly kind: KindId;
  readonly id: string;
  /** Where to go afterwards; the undo key there brings it back. */
  readonly to: string;
}

/** Takes a record and what hangs on it out of the book: one change, taken back by undo. Nothing is erased. */
export function Remove({ kind, id, to }: RemoveProps) {
  const { live, snapshot } = useBook();
  const [, navigate] = useLocation();
  const remove = () => {
    const edits = withChildren(snapshot.book, kind, id).map((one) => ({ ...one, fields: { [GONE]: true } }));
    void live.writeAll(edits, "taken out");
    navigate(to);
  };
  return (
    <Band tint press={{ onPress: remove }}>
      {words.remove}
      <p className="note">{words.undoBrings}</p>
    </Band>
  );
}

/** Which kinds hang on which, by the field that names the parent. Visits stay: they are history. */
const CHILDREN: Readonly<Partial<Record<KindId, readonly (readonly [KindId, string])[]>>> = {
  site: [
    ["point", "site"],
    ["appliance", "site"],
    ["ownership", "site"],
  ],
  point: [["unit", "point"]],
  unit: [
    ["part", "unit"],
    ["openPoint", "unit"],
    ["plan", "unit"],
  ],
  appliance: [["limit", "appliance"]],
  model: [["limit", "appliance"]],
};

interface Doomed {
  readonly kind: KindId;
  readonly record: string;
}

function withChildren(book: Book, kind: KindId, record: string): readonly Doomed[] {
  const below = (CHILDREN[kind] ?? []).flatMap(([child, field]) =>
    [...(book[child] as ReadonlyMap<string, { readonly id: string }>).values()]
      .filter((one) => (one as Readonly<Record<string, unknown>>)[field] === record)
      .flatMap((one) => withChildren(book, child, one.id)),
  );
  return [{ kind, record }, ...below];
}
