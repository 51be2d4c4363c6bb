/** So many at once, and so many more each second. */
export interface Allowance {
  readonly burst: number;
  readonly perSecond: number;
}

interface Bucket {
  left: number;
  at: number;
}

/** Most callers remembered; the ones longest unseen go first and begin full again. */
const MOST = 20_000;

/** Counts what each caller may still do. In one process: behind a balancer each process counts for itself. */
export class RateLimits {
  readonly #allowances: Readonly<Record<string, Allowance>>;
  readonly #buckets = new Map<string, Bucket>();

  constructor(allowances: Readonly<Record<string, Allowance>>) {
    this.#allowances = allowances;
  }

  /** Null when it may go on, else the seconds to wait. An unknown kind is a bug of ours and throws RangeError. */
  take(kind: string, who: string, now: number): number | null {
    const allowance = this.#allowances[kind];
    if (allowance === undefined) throw new RangeError(`No allowance is named ${kind}`);
    const key = `${kind} ${who}`;
    const known = this.#buckets.get(key);
    const elapsed = known === undefined ? 0 : Math.max(0, now - known.at) / 1000;
    const left = Math.min(allowance.burst, (known?.left ?? allowance.burst) + elapsed * allowance.perSecond);
    this.#buckets.delete(key);
    const may = left >= 1;
    this.#buckets.set(key, { left: may ? left - 1 : left, at: now });
    if (this.#buckets.size > MOST) this.#buckets.delete(this.#buckets.keys().next().value!);
    return may ? null : Math.ceil((1 - left) / allowance.perSecond);
  }
}

/** What a shop's devices need, with room; codes slowly, so that nobody tries them all. */
export const USUAL_ALLOWANCES = {
  code: { burst: 10, perSecond: 1 / 30 },
  // All that try codes together, whatever addresses they have.
  codes: { burst: 100, perSecond: 1 },
  request: { burst: 300, perSecond: 20 },
  stranger: { burst: 100, perSecond: 5 },
} as const satisfies Record<string, Allowance>;
