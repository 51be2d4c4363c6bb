import type { Broken } from "./bike.ts";
import type { Intake } from "./breathing.ts";

/** What a fault does to the bike's own physics; all nothing on a sound bike. */
export interface Upset {
  readonly intake: Intake;
  /** Fuel in the bowl stands higher by this, m. */
  readonly level: number;
  /** Wear: needle jet wider, needle thinner, m on the diameter each. */
  readonly jetWear: number;
  readonly needleWear: number;
  /** Free area of the pilot jet over its own. */
  readonly pilotFree: number;
  /** Hole left open by the choke, m². */
  readonly choke: number;
  /** ln of fuel lost at 3/4 and more after long holding. */
  readonly starves: number;
  /** What a misfire or a worn engine makes it seem richer by at full load, and at light load. */
  readonly seemsRichLoaded: number;
  readonly seemsRichLight: number;
}

export const NOTHING: Upset = {
  intake: { leak: 0, filter: 1, blowBack: 0, heldUp: 0 },
  level: 0,
  jetWear: 0,
  needleWear: 0,
  pilotFree: 1,
  choke: 0,
  starves: 0,
  seemsRichLoaded: 0,
  seemsRichLight: 0,
};

const intakeWith = (part: Partial<Intake>): Upset => ({ ...NOTHING, intake: { ...NOTHING.intake, ...part } });

/**
 * A fault as physics. Sizes are estimates of what a workshop meets: holes of a tenth to a third of a square
 * millimetre, levels some millimetres off, a filter that passes a third.
 * @param bore of the carburetor, m: small bikes have small holes
 * @param heat 0 warm, 1 after a hard run: a leak opens with heat
 */
export function upsetBy(broken: Broken | null, bore: number, heat = 0): Upset {
  if (broken === null) return NOTHING;
  const { severity, way } = broken;
  const size = (bore / 0.03) ** 2;
  switch (broken.fault) {
    case "air-leak":
      return intakeWith({ leak: (0.35 + 1.5 * severity) * 1e-6 * size * (1 + 0.7 * heat) });
    case "blocked-pilot":
      return { ...NOTHING, pilotFree: 0.75 - 0.6 * severity };
    case "float-level":
      return {
        ...NOTHING,
        level: way * (0.002 + 0.005 * severity),
        starves: way < 0 ? 0.02 + 0.1 * severity : 0,
      };
    case "float-valve":
      return { ...NOTHING, level: 0.004 + 0.006 * severity };
    case "fuel-supply":
      return { ...NOTHING, starves: 0.08 + 0.3 * severity };
    case "choke-not-seating":
      return { ...NOTHING, choke: (0.006 + 0.03 * severity) * 1e-6 * size };
    case "air-filter":
      return way > 0 ? intakeWith({ filter: 0.6 - 0.35 * severity }) : intakeWith({ filter: 1.3 });
    case "slide-or-cable":
      return intakeWith({ heldUp: (0.0001 + 0.0004 * severity) * (bore / 0.03) });
    case "idle-stop":
      return intakeWith({ heldUp: way * 0.0003 * (0.4 + severity) * (bore / 0.03) });
    case "worn-needle-and-jet":
      return {
        ...NOTHING,
        jetWear: (0.005 + 0.015 * severity) * 1e-3 * (bore / 0.036),
        needleWear: (0.004 + 0.012 * severity) * 1e-3 * (bore / 0.036),
      };
    case "reed":
      return intakeWith({ blowBack: 0.06 + 0.14 * severity });
    case "ignition":
      return { ...NOTHING, seemsRichLoaded: 0.05 + 0.08 * severity, seemsRichLight: 0.02 * severity };
    case "compression":
      return { ...NOTHING, seemsRichLoaded: 0.02 + 0.05 * severity, seemsRichLight: 0.02 + 0.05 * severity };
    case "exhaust-blocked":
      return { ...NOTHING, seemsRichLoaded: 0.04 + 0.08 * severity };
    case "power-valve":
      return {
        ...NOTHING,
        seemsRichLoaded: way > 0 ? 0.03 + 0.08 * severity : 0,
        seemsRichLight: way < 0 ? 0.02 + 0.05 * severity : 0,
      };
    default:
      return NOTHING;
  }
}
