export type RootOutcome =
  | { readonly kind: "root"; readonly x: number; readonly evaluations: number }
  | { readonly kind: "no-sign-change" }
  | { readonly kind: "iteration-limit"; readonly x: number };

/**
 * Root of `f` between `low` and `high` where the sign differs: false position with the Anderson–Björck weight, and a halving
 * whenever the bracket does not shrink. Stops when the step or |f| is below the tolerance.
 */
export function bracketedRoot(
  f: (x: number) => number,
  low: number,
  high: number,
  tolerance: { readonly x: number; readonly f: number },
  limit = 100,
): RootOutcome {
  let [a, b] = [low, high];
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return { kind: "root", x: a, evaluations: 2 };
  if (fb === 0) return { kind: "root", x: b, evaluations: 2 };
  if (!(fa * fb < 0)) return { kind: "no-sign-change" };
  for (let n = 1; n <= limit; n++) {
    const step = (fb * (b - a)) / (fb - fa);
    let x = b - step;
    if (n % 8 === 0 || !(x > Math.min(a, b) && x < Math.max(a, b))) x = (a + b) / 2;
    const fx = f(x);
    if (Math.abs(fx) <= tolerance.f || Math.abs(b - a) <= tolerance.x)
      return { kind: "root", x, evaluations: n + 2 };
    if (fx * fb < 0) {
      a = b;
      fa = fb;
    } else {
      const weight = 1 - fx / fb;
      fa *= weight > 0 ? weight : 0.5;
    }
    b = x;
    fb = fx;
  }
  return { kind: "iteration-limit", x: b };
}

/**
 * Root of an `f` known to be positive at `low` and negative at `high`, from a guess: fixed-point step, then secants, kept inside the
 * bracket; a halving when a secant leaves it, and only halvings after twenty calls (losses may have steps). For residuals of the form g(x) − x with a flat g this needs four or five calls.
 */
export function fallingRoot(
  f: (x: number) => number,
  bracket: { readonly low: number; readonly high: number; readonly guess: number },
  tolerance: { readonly x: number; readonly f: number },
  limit = 200,
): RootOutcome {
  let { low, high, guess: x } = bracket;
  let previous = Number.NaN;
  let previousF = Number.NaN;
  for (let n = 1; n <= limit; n++) {
    const fx = f(x);
    if (Math.abs(fx) <= tolerance.f || high - low <= tolerance.x) return { kind: "root", x, evaluations: n };
    if (fx > 0) low = x;
    else high = x;
    let next = Number.isNaN(previous) ? x + fx : x - (fx * (x - previous)) / (fx - previousF);
    if (!(next > low && next < high) || n % 12 === 0 || n > 20) next = (low + high) / 2;
    previous = x;
    previousF = fx;
    x = next;
  }
  return { kind: "iteration-limit", x };
}
