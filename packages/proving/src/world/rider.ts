import type { Chance } from "../chance.ts";

/** Who rides and reports. */
export interface Rider {
  readonly kind: "novice" | "typical" | "good";
  /** Mixture error that is right for this rider, ln ratio: some like it fat. */
  readonly taste: number;
  /** An error is noticed beyond this many times what an average rider needs. */
  readonly dull: number;
  /** How far one impression strays from another, ln ratio. */
  readonly noise: number;
  /** Chance of calling a bog a stumble, or the other way round. */
  readonly confuses: number;
  /** Chance of saying nothing of a stretch. */
  readonly lapses: number;
  /** Chance of saying that a stretch is well when it is. */
  readonly praises: number;
  /** Chance of noticing what else the bike shows. */
  readonly attends: number;
  /** Chance of saying what was looked for and not there. */
  readonly denies: number;
}

const KINDS: Readonly<Record<Rider["kind"], Omit<Rider, "kind" | "taste">>> = {
  novice: {
    dull: 1.4,
    noise: 0.024,
    confuses: 0.16,
    lapses: 0.28,
    praises: 0.55,
    attends: 0.4,
    denies: 0.05,
  },
  typical: { dull: 1, noise: 0.017, confuses: 0.08, lapses: 0.14, praises: 0.75, attends: 0.6, denies: 0.2 },
  good: { dull: 0.75, noise: 0.011, confuses: 0.03, lapses: 0.05, praises: 0.9, attends: 0.85, denies: 0.45 },
};

/** One rider in four is a beginner and one in four is good; each a little different. All figures are estimates. */
export function drawRider(chance: Chance, kind?: Rider["kind"]): Rider {
  const drawn = chance.weighted([
    ["novice", 1],
    ["typical", 2],
    ["good", 1],
  ] as const);
  const as = kind ?? drawn;
  const usual = KINDS[as];
  const vary = chance.between(0.8, 1.25);
  return {
    kind: as,
    ...usual,
    taste: chance.normal(0.004, 0.01),
    dull: usual.dull * vary,
    confuses: Math.min(0.4, usual.confuses * chance.between(0.5, 1.6)),
    lapses: Math.min(0.5, usual.lapses * chance.between(0.6, 1.5)),
  };
}
