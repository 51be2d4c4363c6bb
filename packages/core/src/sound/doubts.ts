import { type Refusal, refuse } from "../units/outcome.ts";
import type { EngineSound } from "./engine-sound.ts";
import { firingsPerRpm, SPEED_RANGE } from "./engine-sound.ts";
import { octaves } from "./firing-grid.ts";
import { LEAST_IDLE, OPENING_SECONDS } from "./idle.ts";
import type { Idle } from "./sound-event.ts";
import { LINE_RATE, middle, type SpeedLine, share } from "./speed-line.ts";
import type { SpeedTrack } from "./speed-track.ts";

/** Why a sound cannot be taken as evidence. */
export type SoundDoubt =
  | "no-engine"
  | "clipped"
  | "hum"
  | "knocking"
  | "two-sounds"
  | "not-an-engine"
  | "no-idle"
  | "moving"
  | "hint-disagrees";

/** Limits, from made sounds (docs/sound.md). */
const LEAST_ANSWERED = 0.6;
const MOST_FLATTENED = 0.2;
const MOST_AT_FLOOR = 0.3;
/** Slow beats (as revolutions a minute) with less of their evidence than this in the sound itself are each another noise. */
const SLOW_BEAT = 1100;
const LEAST_TONE = 0.15;
const HUM_WIDTH = 0.0012;
/** Mains, Hz (common practice, no source), how near a multiple of it is on it, and wander, percent, that no idle has. */
const MAINS = [50, 60];
const ON_MAINS = 0.003;
const MAINS_WANDER = 0.3;
/** No engine keeps to a multiple of the mains for so long, seconds. */
const HUM_SECONDS = 1.2;
/** Highest speed that still can be an idle, revolutions a minute: a four-stroke read at twice its speed is above it. */
export const HIGHEST_IDLE = { 2: 3200, 4: 2400 } as const;
/** Steps by which no other speed explains the sound as well, in the middle and in the worst tenth together, at least. */
const LEAST_APART = 0.5;
/** Fewer answered frames than this in all, or more leaps a second than this, and it is talk or music. */
const LEAST_STEADY = 0.45;
const MOST_BREAKS = 0.8;

/** Every reason to leave a sound out of account, strongest first; empty when it can be used. */
export function doubtsAbout(
  track: SpeedTrack,
  line: SpeedLine,
  idle: Omit<Idle, "confidence"> | null,
  flattened: number,
  engine: EngineSound,
): readonly Refusal<SoundDoubt>[] {
  const found: Refusal<SoundDoubt>[] = [];
  const answered: number[] = [];
  track.rpm.forEach((rpm, i) => {
    if (rpm > 0) answered.push(i);
  });
  const opening = Math.min(track.rpm.length, Math.round(OPENING_SECONDS / track.hop));
  const early = answered.filter((i) => i < opening).length / Math.max(1, opening);
  if (early < LEAST_ANSWERED) {
    found.push(
      refuse(
        "no-engine",
        "No engine can be heard clearly in the first two seconds. Go nearer, shield the microphone from wind, and start with three seconds of idle.",
      ),
    );
  }
  if (flattened > MOST_FLATTENED) {
    found.push(
      refuse(
        "clipped",
        "The recording is overdriven: its peaks are cut off. Hold the phone farther away and record again.",
      ),
    );
  }
  const floor = answered.filter((i) => track.rpm[i]! < SPEED_RANGE.lowest * 1.06).length;
  const claps =
    middle(answered.map((i) => track.rpm[i]!)) < SLOW_BEAT &&
    middle(answered.map((i) => track.toneShare[i]!)) < LEAST_TONE;
  if (answered.length > 0 && (floor / answered.length > MOST_AT_FLOOR || claps)) {
    found.push(
      refuse(
        "knocking",
        "What is heard beats as hammering or claps do, not as an engine fires. Record again without it.",
      ),
    );
  }
  if (answered.length > 1 / track.hop) {
    const speeds = answered.map((i) => track.rpm[i]!);
    const mid = middle(speeds);
    const wander = 1.4826 * middle(speeds.map((rpm) => Math.abs(rpm / mid - 1)));
    const never = wander < HUM_WIDTH && share(speeds, 0.95) / share(speeds, 0.05) < 1 + 8 * HUM_WIDTH;
    if (never || (idle !== null && isMains(idle, engine)) || staysOnMains(track, engine)) {
      found.push(
        refuse(
          "hum",
          "The tone never changes at all, as mains hum does and no engine can. Move away from what hums and record again.",
        ),
      );
    }
    // A fast change smears any engine's own sound: only steady running tells of another.
    const calm = answered.filter((i) => line.steady(Math.round(i * track.hop * LINE_RATE)));
    const apart = calm.map((i) => track.apart[i]!);
    if (middle(apart) + share(apart, 0.1) < LEAST_APART) {
      found.push(
        refuse(
          "two-sounds",
          "Something else nearly as loud beats along: another engine, a whine or the wind. Record again with this engine alone.",
        ),
      );
    }
    const seconds = track.rpm.length * track.hop;
    if (breaks(track) / seconds > MOST_BREAKS || steadyShare(line) < LEAST_STEADY * 0.5) {
      found.push(
        refuse(
          "not-an-engine",
          "The speed leaps about as talk or music does and no crankshaft can. Record again without it.",
        ),
      );
    }
  }
  const notIdle = idle === null || idle.rpm > HIGHEST_IDLE[engine.strokes] || idle.seconds < LEAST_IDLE;
  if (notIdle) {
    found.push(
      movesPast(track)
        ? refuse(
            "moving",
            "The pitch sinks while it gets loud and quiet again: it rides past. Only a bike standing still gives its true speed.",
          )
        : refuse(
            "no-idle",
            "There is no idle in it to measure from. Start with three seconds of idle, then open and let it fall.",
          ),
    );
  }
  return found;
}

/** Hum as loud as the engine is read in its stead while it idles: as firings at the mains frequency that never waver. */
function isMains({ rpm, wanderPercent }: Omit<Idle, "confidence">, engine: EngineSound): boolean {
  const firings = rpm * firingsPerRpm(engine);
  return (
    wanderPercent < MAINS_WANDER &&
    MAINS.some((mains) => {
      const times = Math.max(1, Math.round(firings / mains));
      return Math.abs(firings / (times * mains) - 1) < ON_MAINS;
    })
  );
}

/** Hum followed for a while between two stretches of the engine: as firings at one multiple of the mains all that time. */
function staysOnMains(track: SpeedTrack, engine: EngineSound): boolean {
  const least = Math.round(HUM_SECONDS / track.hop);
  return MAINS.some((mains) => {
    let times = 0;
    let count = 0;
    return track.rpm.some((rpm) => {
      const firings = rpm * firingsPerRpm(engine);
      const nearest = Math.round(firings / mains);
      const on = nearest > 0 && Math.abs(firings / (nearest * mains) - 1) < ON_MAINS;
      count = on ? (nearest === times ? count + 1 : 1) : 0;
      times = nearest;
      return count >= least;
    });
  });
}

/** Times the speed leaps or breaks off and comes back elsewhere. */
function breaks(track: SpeedTrack): number {
  let count = 0;
  let last = -1;
  for (let i = 0; i < track.rpm.length; i++) {
    if (track.rpm[i] === 0) continue;
    if (last >= 0) {
      const leap = Math.abs(octaves(track.rpm[i]! / track.rpm[last]!));
      if (leap > 0.15 + 0.12 * (i - last)) count += 1;
      else if (i - last > 1 && leap > 0.08) count += 1;
    }
    last = i;
  }
  return count;
}

const steadyShare = (line: SpeedLine): number => {
  let steady = 0;
  let known = 0;
  for (let i = 0; i < line.rpm.length; i++) {
    if (line.rpm[i] === 0) continue;
    known += 1;
    if (line.steady(i)) steady += 1;
  }
  return known === 0 ? 0 : steady / known;
};

/** One loud moment in the middle, pitch higher before than after by what riding past gives. */
function movesPast(track: SpeedTrack): boolean {
  const smooth = [...track.loudness];
  const width = Math.round(0.5 / track.hop);
  let loudest = 0;
  for (let i = width; i < smooth.length - width; i++) if (smooth[i]! > smooth[loudest]!) loudest = i;
  const third = Math.floor(smooth.length / 6);
  if (loudest < third || loudest > smooth.length - third) return false;
  const ends = middle([...smooth.slice(0, third), ...smooth.slice(-third)]);
  const before = [...track.rpm.slice(0, loudest - width / 2)].filter((rpm) => rpm > 0);
  const after = [...track.rpm.slice(loudest + width / 2)].filter((rpm) => rpm > 0);
  if (before.length < width || after.length < width) return false;
  const drop = middle(before) / middle(after) - 1;
  return smooth[loudest]! - ends > 4 && drop > 0.015 && drop < 0.25;
}
