/** One outside value and what our code gives for it. Data with provenance; never our own output. */
export interface ReferenceCheck {
  /** What is checked, in a few words. */
  readonly name: string;
  /** Author, title, year, table or page. "Common practice, no source" for facts of the trade. */
  readonly source: string;
  /** How the value reached us: read in a stored copy, from memory, or computed from the named formula. */
  readonly standing: "read" | "memory" | "computed by hand" | "second library" | "common practice";
  readonly unit: string;
  readonly want: number;
  /** Largest difference allowed: absolute in the unit, or a fraction of `want` when `relative`. */
  readonly within: number;
  readonly relative?: boolean;
  /** Why that tolerance and no other. */
  readonly because: string;
  readonly got: () => number;
}

export interface CheckedReference extends ReferenceCheck {
  readonly ours: number;
  readonly passed: boolean;
}

export function runCheck(check: ReferenceCheck): CheckedReference {
  const ours = check.got();
  const limit = check.relative ? check.within * Math.abs(check.want) : check.within;
  return { ...check, ours, passed: Math.abs(ours - check.want) <= limit };
}
