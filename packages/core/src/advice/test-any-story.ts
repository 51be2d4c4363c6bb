import type { Situation } from "../metering/situation.ts";
import { boreJet, dryAir, FUEL_SCREW, fitted, inAir, SETUP } from "../metering/test-situations.ts";
import { seededRandom } from "../numerics/random.ts";
import { EMPTY_DRAWER } from "../parts/drawer.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import type { BikeCase, CheckResult, MixtureMeasurement, Ride, SignReport, TestResult } from "./case.ts";
import { CHECKS } from "./checks.ts";
import { DRAWER, FOUND, story } from "./test-stories.ts";
import { TESTS } from "./tests-on-engine.ts";

// Random stories for the rules of advice: signs, verdicts, tests, checks and measurements in any mixture,
// contradictions among them, on the parts as found and on others, and sometimes a part that nobody knows.

const SIGNS = [
  "hangs-after-closing",
  "dives-below-idle",
  "drops-straight-to-idle",
  "idles-steadily",
  "idle-loads-up",
  "answers-crisply",
  "bogs-hollow-no-smoke",
  "stumbles-with-smoke",
  "pulls-smoothly",
  "four-strokes-under-load",
  "jerks-at-constant-grip",
  "revs-without-pull",
  "lazy-and-heavy",
  "pings-on-roll-on",
  "pulls-clean-to-peak",
  "will-not-rev-out",
  "roll-off-picks-up",
  "four-strokes-at-about-80-percent",
  "four-strokes-after-tiny-cut",
  "fades-then-recovers",
  "plug-nose-white",
  "plug-nose-dry-black",
  "misses-more-the-harder-it-pulls",
  "fouls-plugs",
];
const RARE_STOP = "tearing-note-at-full-throttle";

/** The next number from 0 to 1. */
type Draw = () => number;

const pick = <T>(random: Draw, from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
const chance = (random: Draw, of: number): boolean => random() < of;
const times = <T>(random: Draw, most: number, make: (i: number) => T): T[] =>
  Array.from({ length: Math.floor(random() * (most + 1)) }, (_, i) => make(i));

/** Situations met in one story: as found, with other parts where those are known, in thinner air. */
function situations(found: Situation): readonly Situation[] {
  const { main, clip, screw } = found.setup;
  const changed: Partial<Setup>[] = [];
  if (main.part !== null) changed.push({ main: known(boreJet(180)) }, { main: known(boreJet(167.5)) });
  if (clip.part !== null) changed.push({ clip: known(2) }, { clip: known(4) });
  if (screw.part !== null) changed.push({ screw: known({ kind: screw.part.kind, turnsOut: 2.25 }) });
  return [found, ...changed.map((parts) => fitted(parts, found)), inAir(dryAir(1.08, 0.01), found)];
}

const NOT_KNOWN: readonly Partial<Setup>[] = [
  { main: UNKNOWN },
  { pilot: UNKNOWN },
  { needle: UNKNOWN, clip: UNKNOWN },
  { screw: UNKNOWN },
  { cutaway: UNKNOWN, needleJet: UNKNOWN },
];

/** The story of that number: always the same one. */
export function anyStory(number: number): BikeCase {
  const random = seededRandom(number).uniform;
  const screwKind = pick(random, ["air", "air", "fuel"] as const);
  const strokes = pick(random, [2, 2, 4] as const);
  const setup: Setup = {
    ...(screwKind === "air" ? SETUP : FUEL_SCREW),
    ...(chance(random, 0.2) ? pick(random, NOT_KNOWN) : {}),
  };
  const found: Situation = { ...FOUND, setup };
  const met = situations(found);
  const where = (): Situation => (chance(random, 0.5) ? found : pick(random, met));
  const report = (): SignReport => ({
    sign: chance(random, 0.01) ? RARE_STOP : pick(random, SIGNS),
    opening: chance(random, 0.2) ? pick(random, SPOKEN_OPENINGS) : null,
    seen: chance(random, 0.85),
  });
  const rides = times(random, 4, (i): Ride => {
    const verdicts = times(random, 2, () => ({
      opening: pick(random, SPOKEN_OPENINGS),
      felt: pick(random, ["better", "same", "worse"] as const),
    }));
    const reports = [report(), ...times(random, 4, report)];
    const against = chance(random, 0.3) ? { situation: pick(random, met), verdicts } : null;
    const at = 10 * i + 1;
    return { record: `ride-${i}`, at, situation: where(), warm: chance(random, 0.9), reports, against };
  });
  const tests = times(random, 2, (i): TestResult => {
    const test = pick(random, TESTS);
    const numbers: TestResult["numbers"] = chance(random, 0.3)
      ? { bestTurns: pick(random, [0.75, 1.5, 2.5]) }
      : {};
    return {
      record: `test-${i}`,
      at: 10 * i + 4,
      situation: where(),
      test: test.id,
      opening: test.openings.length > 0 ? pick(random, test.openings) : null,
      outcome: pick(random, test.outcomes).id,
      numbers,
    };
  });
  const checks = times(random, 2, (i): CheckResult => {
    const check = pick(random, CHECKS);
    return {
      record: `check-${i}`,
      at: 10 * i + 6,
      check: check.id,
      found: pick(random, ["sound", "sound", "sound", "mended", "faulty"] as const),
      fault: chance(random, 0.5) ? Object.keys(check.finds)[0]! : null,
    };
  });
  const measurements = times(
    random,
    1,
    (i): MixtureMeasurement => ({
      record: `lambda-${i}`,
      at: 10 * i + 8,
      situation: where(),
      opening: pick(random, SPOKEN_OPENINGS),
      error: 0.16 * (random() - 0.5),
      sd: 0.03,
    }),
  );
  return story({
    engine: { ...story().engine, strokes },
    now: where(),
    reference: found,
    rides,
    tests,
    checks,
    measurements,
    drawer: pick(random, [
      DRAWER,
      DRAWER,
      { ...EMPTY_DRAWER, mains: DRAWER.mains, pilots: DRAWER.pilots },
      EMPTY_DRAWER,
    ]),
    oneChangeAtATime: chance(random, 0.25),
    freshStartAt: chance(random, 0.1) ? 11 : null,
  });
}
