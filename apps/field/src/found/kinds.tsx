interface KindsProps<K extends string> {
  readonly name: string;
  readonly all: readonly { readonly id: K; readonly label: string; readonly hint?: string }[];
  readonly chosen: K | undefined;
  readonly onChoose: (id: K) => void;
}

/** A few things side by side, one of which it is. */
export function Kinds<K extends string>({ name, all, chosen, onChoose }: KindsProps<K>) {
  return (
    <fieldset className="found-kinds" aria-label={name}>
      {all.map(({ id, label, hint }) => (
        <button type="button" key={id} aria-pressed={id === chosen} onClick={() => onChoose(id)}>
          <strong>{label}</strong>
          {hint ? <span className="note">{hint}</span> : null}
        </button>
      ))}
    </fieldset>
  );
}
