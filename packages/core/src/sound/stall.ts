import type { Stall } from "./sound-event.ts";
import { LINE_RATE, type SpeedLine } from "./speed-line.ts";

/** It died this many seconds before the sound ends, at least. */
const SILENT_FOR = 0.7;
/** A dying engine dips below this times idle in its last moments, seconds. */
const DIPS_TO = 0.85;
const LAST_MOMENTS = 0.3;

/** The engine dying, told by its speed alone: a phone's gain brings noise up again within a second. */
export function findStall(line: SpeedLine, idleRpm: number): Omit<Stall, "confidence"> | null {
  let last = line.rpm.length - 1;
  while (last >= 0 && line.rpm[last] === 0) last -= 1;
  if (last < 0 || line.rpm.length - 1 - last < SILENT_FOR * LINE_RATE) return null;
  let least = Infinity;
  for (let k = Math.max(0, last - LAST_MOMENTS * LINE_RATE); k <= last; k++) {
    if (line.rpm[k]! > 0) least = Math.min(least, line.rpm[k]!);
  }
  if (least > DIPS_TO * idleRpm) return null;
  return { kind: "stall", at: last / LINE_RATE, until: (line.rpm.length - 1) / LINE_RATE };
}
