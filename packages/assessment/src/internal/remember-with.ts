const MOST = 6;

interface Answered<B, R> {
  readonly rest: B;
  readonly answer: R;
}

/**
 * The same pure function of objects that are never altered in place, its last answers kept with the first of them and gone with it.
 * A record that did not change is the same object from one book to the next, so a long history is worked out once. Asked with other
 * objects of the same content it works the answer out again.
 */
export function rememberWith<A extends object, B extends readonly unknown[], R>(
  f: (first: A, ...rest: B) => R,
): (first: A, ...rest: B) => R {
  const kept = new WeakMap<A, Answered<B, R>[]>();
  return (first, ...rest) => {
    const answered = kept.get(first) ?? [];
    const known = answered.find((one) => one.rest.every((part, i) => Object.is(part, rest[i])));
    if (known) return known.answer;
    const answer = f(first, ...rest);
    kept.set(first, [{ rest, answer }, ...answered].slice(0, MOST));
    return answer;
  };
}
