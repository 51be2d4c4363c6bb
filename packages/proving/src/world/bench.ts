import type { Chance } from "../chance.ts";
import { LIFTS, type PartName } from "../truth/bike.ts";
import type { Drawn } from "../truth/draw-bike.ts";
import { stepped } from "../truth/sizes.ts";
import { TELLS } from "./tells.ts";
import type { Written } from "./written.ts";

/** What lies in the drawer, what was written down of the bike, and how it shows its fault. */
export interface Bench {
  readonly mains: readonly number[];
  readonly pilots: readonly number[];
  readonly cutaways: readonly number[];
  readonly needleJets: readonly number[];
  readonly owns: (name: PartName, value: number) => boolean;
  readonly written: Written;
  /** How far the screw stands from where it was counted. */
  readonly turnsOff: number;
  /** The needle's measured profile is at hand. */
  readonly needleKnown: boolean;
  /** What this engine sounds like that is not its mixture, at each of LIFTS, ln ratio. */
  readonly character: readonly number[];
  readonly shows: ReadonlySet<string>;
  /** How far the smoothest idle lies from the wanted mixture. */
  readonly idlePeak: number;
}

export function drawBench(chance: Chance, { bike, found, broken }: Drawn): Bench {
  const { numbering } = bike.body;
  const some = (place: "main" | "pilot", from: number, reach: number): readonly number[] =>
    Array.from({ length: 2 * reach + 1 }, (_, i) => stepped(place, numbering, from, i - reach)).filter(
      (size) => size !== from && chance.of(0.65),
    );
  const mains = some("main", found.main, 5);
  const pilots = some("pilot", found.pilot, 3);
  const cutaways = chance.of(0.25) ? [found.cutaway + chance.pick([-0.0005, 0.0005])] : [];
  const needleJets = chance.of(0.15) ? [found.needleJet + chance.pick([-2e-5, 2e-5])] : [];
  const written: { [name in PartName]: number | null } = { ...found };
  // One bike in five has something wrong or missing in its record.
  if (chance.of(0.2)) {
    const which = chance.pick([
      "groove",
      "main",
      "pilot",
      "unknown pilot",
      "unknown clip",
      "unknown main",
    ] as const);
    if (which === "groove") written.groove = bike.needle.grooves + 1 - found.groove;
    if (which === "main") written.main = stepped("main", numbering, found.main, chance.pick([-1, 1]));
    if (which === "pilot") written.pilot = stepped("pilot", numbering, found.pilot, chance.pick([-1, 1]));
    if (which === "unknown pilot") written.pilot = null;
    if (which === "unknown clip") written.groove = null;
    if (which === "unknown main") written.main = null;
  }
  const lists: Partial<Record<PartName, readonly number[]>> = {
    main: mains,
    pilot: pilots,
    cutaway: cutaways,
    needleJet: needleJets,
  };
  const shows = new Set<string>();
  if (broken !== null) {
    for (const [sign, slight, bad] of TELLS[broken.fault] ?? []) {
      if (chance.of(slight + (bad - slight) * broken.severity)) shows.add(sign);
    }
  }
  const tilt = chance.normal(0, 0.008);
  const level = chance.normal(0, 0.008);
  return {
    mains,
    pilots,
    cutaways,
    needleJets,
    owns: (name, value) => {
      const list = lists[name];
      return (
        list === undefined || value === found[name] || list.some((each) => Math.abs(each - value) < 1e-9)
      );
    },
    written,
    turnsOff: chance.normal(0, 0.08),
    needleKnown: chance.of(0.6),
    character: LIFTS.map((lift) => level + tilt * (2 * Math.sqrt(lift) - 1)),
    shows,
    idlePeak: chance.normal(0, 0.015),
  };
}
