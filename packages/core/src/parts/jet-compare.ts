import { accept, type Outcome, refuse } from "../units/outcome.ts";
import { type Jet, type JetNumbering, jetArea } from "./jet.ts";
import type { HowKnown, Known } from "./known.ts";

export interface JetRatio {
  /** Area of the second jet over the first. */
  readonly ratio: number;
  /** One standard deviation of `ratio` over `ratio`. */
  readonly relativeSd: number;
}

/** Scatter of a jet's area about its number within one packet, 1 sd: 1 % of bore (estimate, from memory). */
const PACKET_SCATTER = 0.02;
/** How far one maker's numbers lie from another's in area, 1 sd: a tuner reports 5 % in number, 10 % in area, taken as 2 sd. */
const MAKER_SPREAD = 0.05;
/** Bore of a jet of a flow number, d[mm] = √(n/100), holds within 5 % of bore, 10 % of area. */
const NUMBERING_ERROR = "10 %";

/**
 * Area of jet `to` over that of jet `from`: bore numbers as their square, flow numbers as they are. Refuses two
 * numberings and two named makers, since the same number is then another hole; the refusal says how far off a
 * comparison could be. An unnamed maker is taken as the same one, with more doubt.
 * Source of the sizes of error: scootermagazine.it, p. 1409, read in a stored copy.
 */
export function jetAreaRatio(from: Jet, to: Jet): Outcome<JetRatio, "other numbering" | "other maker"> {
  const ratio = jetArea(to) / jetArea(from);
  if (from.numbering !== to.numbering) {
    return refuse(
      "other numbering",
      `${jetText(from)} and ${jetText(to)} are numbered in different ways. A guess puts the second at ${Math.round(ratio * 100)} % of the first's area, but it can be ${NUMBERING_ERROR} off, more than two sizes. Measure both with drills or pin gauges, or stay with one numbering.`,
    );
  }
  if (bothNamed(from, to) && !sameMaker(from, to)) {
    return refuse(
      "other maker",
      `${jetText(from)} and ${jetText(to)} come from two makers: the same number can be 5 % another bore and 10 % another area, more than two sizes. Measure both, or stay with one maker.`,
    );
  }
  const doubt = sameMaker(from, to) ? 0 : MAKER_SPREAD;
  return accept({
    ratio,
    relativeSd: Math.sqrt(2 * PACKET_SCATTER * PACKET_SCATTER + doubt * doubt),
  });
}

const maker = (jet: Jet): string => jet.maker.trim().toLowerCase();

/** Whether two jets carry the same maker's name, whatever the case; two without a name count as the same. */
export const sameMaker = (a: Jet, b: Jet): boolean => maker(a) === maker(b);

const bothNamed = (a: Jet, b: Jet): boolean => maker(a) !== "" && maker(b) !== "";

/** Doubt about a jet's area, relative, 1 sd. */
export interface JetTolerance {
  /** Of this jet alone. */
  readonly own: number;
  /** Shared by all jets of its maker: drops out when two of them are compared. */
  readonly shared: number;
}

/** Own doubt by how the jet is known. Estimates: a gauge reads 0.005 mm; a number told from memory is one size off now and then. */
const OWN_DOUBT: Readonly<Record<Exclude<HowKnown, "unknown">, number>> = {
  measured: 0.01,
  "read by eye": PACKET_SCATTER,
  told: 0.05,
};

/** How well the area of a fitted jet is known from its number; null when nobody knows what is fitted. */
export function jetTolerance(fitted: Known<Jet>): JetTolerance | null {
  if (fitted.part === null || fitted.how === "unknown") return null;
  return {
    own: OWN_DOUBT[fitted.how],
    shared: fitted.how === "measured" ? 0 : MAKER_SPREAD,
  };
}

const NUMBERING_WORDS: Readonly<Record<JetNumbering, string>> = { bore: "bore, 1/100 mm", flow: "flow" };

/** A jet as it is spoken of: "175 (bore, 1/100 mm)", with the maker where it is known. */
export function jetText(jet: Jet): string {
  const named = jet.maker.trim() === "" ? "" : `, ${jet.maker.trim()}`;
  return `${jet.number} (${NUMBERING_WORDS[jet.numbering]}${named})`;
}
