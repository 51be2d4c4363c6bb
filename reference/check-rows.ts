import type { ReferenceCheck } from "./check.ts";

/** One check in short: for tables of many. */
export type Row = readonly [
  name: string,
  source: string,
  unit: string,
  want: number,
  within: number,
  because: string,
  got: () => number,
];
/** Full checks from rows that share a standing. */
export const read = (rows: readonly Row[], standing: ReferenceCheck["standing"] = "read"): ReferenceCheck[] =>
  rows.map(([name, source, unit, want, within, because, got]) => ({
    name,
    source,
    standing,
    unit,
    want,
    within,
    because,
    got,
  }));
