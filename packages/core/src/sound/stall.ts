import type { Chop, Idle, Stall } from "./sound-event.ts";
import { LINE_RATE, middle, type SpeedLine } from "./speed-line.ts";

/** It died this many seconds before the sound ends, at least. */
const SILENT_FOR = 0.7;
/** A dying engine dips below this times idle in its last moments, seconds. */
const DIPS_TO = 0.85;
const LAST_MOMENTS = 0.3;
/** Back at idle: within this of it for so many seconds after the throttle was shut. */
const BACK = 0.1;
const BACK_FOR = 0.3;
/** What was not heard to dip must be silent this many seconds, and not louder than idle was, decibels. */
const UNHEARD_FOR = 1.2;
const LOUDER = 1;

/**
 * The engine dying, told by its speed: it dips far below idle and is not heard again, or it is not heard again after
 * the throttle was shut and never came back to idle. Shut off at idle, it has not stalled. Loudness alone tells
 * nothing, as a phone's gain brings noise up again within a second.
 */
export function findStall(
  line: SpeedLine,
  idle: Omit<Idle, "confidence">,
  chops: readonly Omit<Chop, "confidence">[],
): Omit<Stall, "confidence"> | null {
  const { rpm } = line;
  let last = rpm.length - 1;
  while (last >= 0 && rpm[last] === 0) last -= 1;
  const silent = (rpm.length - 1 - last) / LINE_RATE;
  if (last < 0 || silent < SILENT_FOR) return null;
  let least = Infinity;
  for (let k = Math.max(0, last - LAST_MOMENTS * LINE_RATE); k <= last; k++) {
    if (rpm[k]! > 0) least = Math.min(least, rpm[k]!);
  }
  const dipped = least <= DIPS_TO * idle.rpm;
  if (!dipped && !(silent >= UNHEARD_FOR && neverCameBack(line, idle.rpm, chops.at(-1), last))) return null;
  return { kind: "stall", at: last / LINE_RATE, until: (rpm.length - 1) / LINE_RATE };
}

function neverCameBack(
  { rpm, loudness }: SpeedLine,
  idle: number,
  chop: Omit<Chop, "confidence"> | undefined,
  last: number,
): boolean {
  if (chop === undefined) return false;
  let near = 0;
  for (let k = Math.round(chop.at * LINE_RATE); k <= last; k++) {
    near = Math.abs(rpm[k]! / idle - 1) < BACK ? near + 1 : 0;
    if (near >= BACK_FOR * LINE_RATE) return false;
  }
  // Something louder that came up may have covered it.
  const before = [...loudness].filter((_, k) => k < last && Math.abs(rpm[k]! / idle - 1) < BACK);
  const after = [...loudness.slice(last + LINE_RATE / 10, last + LINE_RATE / 2)];
  return middle(after) < middle(before) + LOUDER;
}
