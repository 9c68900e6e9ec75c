/**
 * The one comparison that both the tests gate on and `npm run accuracy` reports: a quantity, what the world outside says
 * of it, and what we compute. A check whose value is not a finite number fails; it never skips.
 */
export interface Check {
  /** unique within its topic, as in the fixture where there is one */
  readonly id: string;
  /** what is compared, the same words for rows to be reported together */
  readonly quantity: string;
  readonly unit: string;
  readonly source: string;
  readonly standing:
    "published" | "own computation from the published equation" | "from memory" | "common practice, no source";
  readonly expected: number;
  /** the larger of the two is allowed; rel is of |expected| */
  readonly tolerance: { readonly abs?: number; readonly rel?: number };
  readonly got: () => number;
}

export interface Comparison {
  readonly check: Check;
  readonly got: number;
  readonly difference: number;
  readonly allowed: number;
  readonly ok: boolean;
}

export function compare(check: Check): Comparison {
  const got = check.got();
  const difference = got - check.expected;
  const allowed = Math.max(check.tolerance.abs ?? 0, (check.tolerance.rel ?? 0) * Math.abs(check.expected));
  return { check, got, difference, allowed, ok: Math.abs(difference) <= allowed };
}
