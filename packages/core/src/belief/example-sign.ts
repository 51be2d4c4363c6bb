import { OPENINGS } from "../units/opening.ts";
import type { Sign } from "./catalogue.ts";
import type { Checked, Compared, Measured, SignSeen } from "./observation.ts";
import { NO_SHIFT, stretchAt } from "./state.ts";

/** Made-up signs and observations for tests, with what matters to a test given and the rest plain. */

export const exampleSign = (what: Partial<Sign> = {}): Sign => ({
  id: "example",
  speaksOf: [[OPENINGS[4]!, 1]],
  chance: { rich: 0.6, right: 0.1, lean: 0.05 },
  faults: {},
  healthy: false,
  reliability: "B",
  group: "example",
  strokes: "both",
  warmOnly: true,
  stop: false,
  source: "made up",
  ...what,
});

export const exampleSeen = (sign: Sign, what: Partial<SignSeen> = {}): SignSeen => ({
  kind: "sign",
  record: "r1",
  at: 1,
  sign,
  stretch: stretchAt(OPENINGS[4]!),
  seen: true,
  shift: NO_SHIFT,
  situation: "s1",
  ...what,
});

export const exampleCompared = (what: Partial<Compared> & Pick<Compared, "after">): Compared => ({
  kind: "compared",
  record: "r2",
  at: 2,
  opening: OPENINGS[4]!,
  felt: "better",
  before: NO_SHIFT,
  situation: "s2",
  ...what,
});

export const exampleMeasured = (error: number, what: Partial<Measured> = {}): Measured => ({
  kind: "measured",
  record: "m1",
  at: 3,
  stretch: stretchAt(OPENINGS[4]!),
  error,
  sd: 0.02,
  shift: NO_SHIFT,
  ...what,
});

export const exampleCheck = (what: Partial<Checked> = {}): Checked => ({
  kind: "checked",
  record: "c1",
  at: 4,
  check: "pressure",
  finds: { "air-leak": 0.9, "gearbox-side-seal": 0.4 },
  falseAlarm: 0.05,
  found: "faulty",
  fault: null,
  ...what,
});
