/** A looking over that was begun on this device: which looks it holds, since when, and what was left out. */
export interface Begun {
  /** Empty until the first tap: then the looks advised are shown. */
  readonly looks: readonly string[];
  /** Milliseconds since 1970. */
  readonly from: number;
  readonly skipped: readonly string[];
}

export const NOT_BEGUN: Begun = { looks: [], from: 0, skipped: [] };

/** What was begun longer ago is begun anew. */
const WEEK = 7 * 86_400_000;

/** What this or another version of the app stored; what is not understood, and what is a week old, is not begun. */
export function readBegun(stored: unknown, now: number): Begun {
  if (typeof stored !== "object" || stored === null) return NOT_BEGUN;
  const { looks, from, skipped } = stored as Partial<Record<keyof Begun, unknown>>;
  if (typeof from !== "number" || !(now - from < WEEK)) return NOT_BEGUN;
  const names = (value: unknown): readonly string[] =>
    Array.isArray(value) ? value.filter((each) => typeof each === "string") : [];
  return { looks: names(looks), from, skipped: names(skipped) };
}
