import { log } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
import { jetAreaRatio } from "../parts/jet-compare.ts";
import { CIRCUITS, type Circuit, type Shift } from "../units/circuit.ts";
import { mainShare, type Side } from "./branches.ts";
import { sameJet, sameNeedle } from "./comparable.ts";
import { outletThrottling } from "./fitted.ts";
import type { Frame } from "./frame.ts";

/** How well a circuit's part of a comparison is known, for people. */
export interface Firmness {
  readonly word: "unchanged" | "firm" | "fair" | "soft";
  /** One sentence: what the figure can be off by, and why. */
  readonly text: string;
}

/** Spread of a needle or needle jet about its stamp, m. Estimate. */
const DIAMETER_SD = 0.005e-3;

/** Error of the model itself as a part of the change. */
const FIRM = 0.04;
const SOFT = 0.4;
/** Added where a part that shares the flow is not known and a usual one stands in. */
const STAND_IN = 0.15;
/** A clip move of a needle nobody has measured: taper and clearance may be half or twice the usual. */
const UNKNOWN_NEEDLE = 0.4;
/** A bled nozzle: air in the well takes an unknown part of the signal. */
const BLED = 0.15;
/** Air: the exponent of density is 0.5 with this spread. Estimate; no measured one was found. */
const DENSITY_POWER_SD = 0.1;
/** Viscosity's part of the change is good to half, oil's to a third (it burns in part). */
const VISCOSITY_SD = 0.5;
const OIL_SD = 0.33;

const root = (...sds: readonly number[]): number => {
  let sum = 0;
  for (const sd of sds) sum += sd * sd;
  return Math.sqrt(sum);
};

/** Spread of the ratio of two jets' areas; none where they are one jet. */
function jetSd(a: Jet | null, b: Jet | null): number {
  if (a === null || b === null || sameJet(a, b)) return 0;
  const ratio = jetAreaRatio(a, b);
  return ratio.ok ? ratio.value.relativeSd : 0;
}

/** What part of each circuit's change the model may be wrong by. */
export function relativeSds(frame: Frame, a: Side): Readonly<Record<Exclude<Circuit, "air">, number>> {
  const setup = a.situation.setup;
  const needleOpen = (setup.needle.part?.profile ?? null) === null;
  const jetOpen = setup.needleJet.part === null;
  const bled = frame.body.nozzle === "bleed" ? BLED : 0;
  const neighbour = (unknown: boolean): number => (unknown ? STAND_IN : 0);
  return {
    pilot: SOFT,
    screw: SOFT,
    slide: SOFT,
    needle: root(
      FIRM,
      bled,
      needleOpen ? UNKNOWN_NEEDLE : 0,
      neighbour(jetOpen),
      neighbour(setup.clip.part === null),
      neighbour(frame.body.seatToJet === null),
      neighbour(setup.main.part === null),
    ),
    main: root(
      FIRM,
      bled,
      neighbour(needleOpen),
      neighbour(jetOpen),
      neighbour(setup.fuelLift.part === null),
    ),
  };
}

/** One standard deviation of each circuit's part of the shift, in the log, at each opening. */
export function spreadOf(frame: Frame, a: Side, b: Side, shift: Shift): Shift {
  const relative = relativeSds(frame, a);
  const sds: Record<Circuit, number[]> = { pilot: [], screw: [], slide: [], needle: [], main: [], air: [] };
  const from = a.situation;
  const to = b.situation;
  const mainSd = jetSd(from.setup.main.part, to.setup.main.part);
  const pilotSd = jetSd(from.setup.pilot.part, to.setup.pilot.part);
  const otherNeedle = !sameNeedle(from.setup.needle.part, to.setup.needle.part);
  const otherNeedleJet = from.setup.needleJet.part !== to.setup.needleJet.part;
  const air = airSd(a, b);
  for (let i = 0; i < frame.lift.length; i++) {
    const w = frame.pilotShare[i]!;
    const both = [a, b].map(({ fitted }) => {
      const needle = fitted.needleAt[i]!;
      const share = mainShare(fitted.mainArea, fitted.annulus[i]!);
      const perMetre = (2 * (1 - share)) / (fitted.needleJet * fitted.needleJet - needle * needle);
      return {
        main: share,
        needle: perMetre * needle * (fitted.profile.diameterSd || DIAMETER_SD),
        needleJet: perMetre * fitted.needleJet * DIAMETER_SD,
      };
    }) as [Ends, Ends];
    const [x, y] = both;
    const pilotReach =
      frame.body.screwKind === "air" ? 1 : 0.5 * (1 / (1 + throttling(a)) + 1 / (1 + throttling(b)));
    sds.pilot.push(root(relative.pilot * shift.pilot[i]!, w * pilotReach * pilotSd));
    sds.screw.push(relative.screw * Math.abs(shift.screw[i]!));
    sds.slide.push(relative.slide * Math.abs(shift.slide[i]!));
    sds.needle.push(
      root(
        relative.needle * shift.needle[i]!,
        otherNeedle ? (1 - w) * root(x.needle, y.needle) : 0,
        otherNeedleJet ? (1 - w) * root(x.needleJet, y.needleJet) : 0,
      ),
    );
    sds.main.push(root(relative.main * shift.main[i]!, (1 - w) * 0.5 * (x.main + y.main) * mainSd));
    sds.air.push(air);
  }
  return sds;
}

interface Ends {
  readonly main: number;
  readonly needle: number;
  readonly needleJet: number;
}

const throttling = (side: Side): number => outletThrottling(side.fitted.pilot, side.fitted.turns);

/** Spread of the air's part: the exponent, both air readings, viscosity and oil. */
function airSd(a: Side, b: Side): number {
  const [p, q] = [a.situation.air, b.situation.air];
  const [f, g] = [a.situation.fuel, b.situation.fuel];
  const sameAir = p.density === q.density && p.dryDensity === q.dryDensity;
  return root(
    DENSITY_POWER_SD * log(q.density / p.density),
    sameAir ? 0 : 0.5 * root(p.relativeSd, q.relativeSd),
    VISCOSITY_SD * 0.05 * log(g.viscosityRatio / f.viscosityRatio),
    OIL_SD * log(g.fuelShare / f.fuelShare),
  );
}

const percent = (x: number): string => `${Math.round(x * 100)} %`;

/** In words, how firm each circuit's part is. */
export function firmnessOf(frame: Frame, a: Side, shift: Shift): Readonly<Record<Circuit, Firmness>> {
  const relative = { ...relativeSds(frame, a), air: 0.2 };
  const entries = CIRCUITS.map((circuit): [Circuit, Firmness] => {
    if (shift[circuit].every((x) => x === 0)) {
      return [circuit, { word: "unchanged", text: "Nothing changed here." }];
    }
    const off = relative[circuit];
    const word = off < 0.1 ? "firm" : off <= 0.25 ? "fair" : "soft";
    return [circuit, { word, text: reason(circuit, word, percent(off)) }];
  });
  return Object.fromEntries(entries) as Record<Circuit, Firmness>;
}

function reason(circuit: Circuit, word: "firm" | "fair" | "soft", off: string): string {
  if (circuit === "air") {
    return `Good to about ${off} of the change: carburetors follow the square root of the air's density, but not strictly.`;
  }
  if (circuit === "needle" || circuit === "main") {
    return word === "firm"
      ? `Good to about ${off} of the change, by the sizes of the parts; two jets of one number still differ by 2 % in area.`
      : `Good to about ${off} of the change only: a part beside it is not known, or the nozzle is bled with air.`;
  }
  return `Good to about ${off} of the change only: how much this circuit feeds differs from body to body.`;
}
