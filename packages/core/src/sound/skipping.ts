import type { Skipping } from "./sound-event.ts";
import { middle } from "./speed-line.ts";
import type { SpeedTrack } from "./speed-track.ts";

/** Skipping shorter than this, seconds, is not told. */
const LEAST = 0.3;

/** Every stretch in which the engine fired only every second time. */
export function findSkipping(track: SpeedTrack): Omit<Skipping, "confidence">[] {
  const found: Omit<Skipping, "confidence">[] = [];
  let from = -1;
  for (let i = 0; i <= track.skipping.length; i++) {
    const skips = i < track.skipping.length && track.skipping[i] === 1;
    if (skips && from < 0) from = i;
    if (!skips && from >= 0) {
      if ((i - from) * track.hop >= LEAST) {
        found.push({
          kind: "skipping",
          at: from * track.hop,
          until: i * track.hop,
          rpm: middle([...track.rpm.slice(from, i)]),
        });
      }
      from = -1;
    }
  }
  return found;
}
