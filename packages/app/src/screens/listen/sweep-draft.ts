import type { SweepMark } from "@jetwright/core";

/** A sweep half done, as it outlives a reload. */
export interface SweepDraft {
  /** Where the screw was at first, turns out; null: as on record. */
  readonly start: number | null;
  /** Where it is now; null: where it was. */
  readonly at: number | null;
  readonly step: number;
  readonly marks: readonly SweepMark[];
}

export const MOST_TURNS = 5;
const EMPTY: SweepDraft = { start: null, at: null, step: 0.25, marks: [] };

const place = (value: unknown): number | null =>
  typeof value === "number" && value >= 0 && value <= MOST_TURNS ? value : null;

/** A draft from whatever is stored; never throws. */
export function readSweepDraft(stored: unknown): SweepDraft {
  if (typeof stored !== "object" || stored === null) return EMPTY;
  const { start, at, step, marks } = stored as Record<string, unknown>;
  return {
    start: place(start),
    at: place(at),
    step: step === 0.125 ? 0.125 : 0.25,
    marks: Array.isArray(marks) ? marks.filter(isMark) : [],
  };
}

function isMark(value: unknown): value is SweepMark {
  if (typeof value !== "object" || value === null) return false;
  const { turns, rpm, error } = value as Record<string, unknown>;
  return (
    place(turns) !== null && typeof rpm === "number" && rpm > 0 && typeof error === "number" && error >= 0
  );
}
