/**
 * The same pure function, its last answers kept by what was asked: while a visit is typed, nearly everything in it stays as it was.
 * `asked` must be plain data.
 */
export function remember<A, R>(f: (asked: A) => R, most = 400): (asked: A) => R {
  const kept = new Map<string, { readonly answer: R }>();
  return (asked) => {
    const key = JSON.stringify(asked);
    const known = kept.get(key);
    if (known) return known.answer;
    const answer = f(asked);
    if (kept.size >= most) kept.clear();
    kept.set(key, { answer });
    return answer;
  };
}
