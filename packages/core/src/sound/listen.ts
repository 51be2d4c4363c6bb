import { accept, type Outcome, type Refusal, refuse } from "../units/outcome.ts";
import { findChops } from "./chops.ts";
import { doubtsAbout, HIGHEST_IDLE, type SoundDoubt } from "./doubts.ts";
import type { EngineSound } from "./engine-sound.ts";
import { withConfidence } from "./event-confidence.ts";
import { octaves } from "./firing-grid.ts";
import { findHunting } from "./hunting.ts";
import { findIdle } from "./idle.ts";
import { findSkipping } from "./skipping.ts";
import { findSnaps } from "./snaps.ts";
import type { SoundEvent } from "./sound-event.ts";
import { type HeardFrame, type SpeedFollower, speedFollower } from "./speed-follower.ts";
import { type SpeedLine, share, speedLine } from "./speed-line.ts";
import { type SpeedTrack, speedTrack } from "./speed-track.ts";
import { findStall } from "./stall.ts";

/** Everything heard in one recording. */
export interface Heard {
  readonly seconds: number;
  readonly track: SpeedTrack;
  /** In order of time, each with its confidence; empty when there are doubts. */
  readonly events: readonly SoundEvent[];
  /** Reasons to leave the recording out of account, strongest first; the track is still there to be looked at. */
  readonly doubts: readonly Refusal<SoundDoubt>[];
  readonly picture: SoundPicture | null;
}

/** How far each frequency stands out at each moment: what the speed was read from. */
export interface SoundPicture {
  readonly lowest: number;
  /** Steps of frequency to an octave. */
  readonly steps: number;
  readonly rows: number;
  readonly frames: number;
  /** Frame by frame, lowest frequency first, 0 to 255. */
  readonly values: Uint8Array;
}

export type ListenRefusal = "too-short" | "too-long" | "coarse-sound";

const LEAST_SECONDS = 2.5;
const MOST_SECONDS = 180;
const LEAST_RATE = 6000;
/** A whole recording can wait longer than the live needle: seconds after which a frame is decided. */
const DECIDED_AFTER = 8;

/** A hint counts when the steady speed is within this many octaves of half of it. */
const HALF_HINT = 0.35;
/**
 * Least part of an idle's salience that half of it must have to be the idle. Half a speed with nothing at its odd
 * multiples has 1/√2 of it at most; 20 made four-strokes idling at 2500 to 3000 had 0.17 to 0.55, four that were read
 * at twice their idle 0.78 to 0.93.
 */
const LEAST_HALF = 0.68;
/** Octaves to either side, and salience taken off there. */
const NEAR_IDLE = 0.32;
const DISFAVOUR = 2.5;

/**
 * Reads a whole recording of one engine, one channel, full scale ±1.
 * Accuracy on made sounds: docs/sound.md. No real engine has been measured yet.
 */
export function listen(
  samples: Float32Array,
  rate: number,
  engine: EngineSound,
  { pictures }: { readonly pictures: boolean },
): Outcome<Heard, ListenRefusal> {
  if (!(rate >= LEAST_RATE)) {
    return refuse(
      "coarse-sound",
      `The recording has ${rate} samples a second; at least ${LEAST_RATE} are needed. Record it again as ordinary sound.`,
      { rate, least: LEAST_RATE },
    );
  }
  const seconds = samples.length / rate;
  if (seconds < LEAST_SECONDS) {
    return refuse(
      "too-short",
      `The recording lasts ${seconds.toFixed(1)} seconds; at least ${LEAST_SECONDS} are needed, three of them idling.`,
      { seconds: seconds.toFixed(1), least: LEAST_SECONDS },
    );
  }
  if (seconds > MOST_SECONDS) {
    return refuse(
      "too-long",
      `The recording lasts ${Math.round(seconds)} seconds; ${MOST_SECONDS} are enough. Cut it, or record one take at a time.`,
      { seconds: Math.round(seconds), most: MOST_SECONDS },
    );
  }
  const read = (penalty: ((rpm: number) => number) | null): Followed =>
    follow(samples, rate, engine, penalty, pictures);
  return accept({ seconds, ...conclude(withoutDoubledIdle(read(null), engine, read), engine) });
}

interface Followed {
  readonly follower: SpeedFollower;
  readonly frames: readonly HeardFrame[];
}

function follow(
  samples: Float32Array,
  rate: number,
  engine: EngineSound,
  penalty: ((rpm: number) => number) | null,
  pictures: boolean,
): Followed {
  const follower = speedFollower(engine, rate, { penalty, pictures, decidedAfter: DECIDED_AFTER });
  const frames = [...follower.push(samples), ...follower.finish()];
  return { follower, frames };
}

/**
 * A four-stroke whose every turn is heard, by its clicks or its breath, can be read at twice its speed while it idles:
 * the path then has to fall before a snap. Where half of too high an idle explains the sound nearly as well, which it
 * cannot when nothing happens every second turn, the sound is read again with that idle disfavoured.
 */
function withoutDoubledIdle(
  plain: Followed,
  engine: EngineSound,
  again: (penalty: (rpm: number) => number) => Followed,
): Followed {
  if (engine.strokes === 2) return plain;
  const line = speedLine(speedTrack(plain.frames, plain.follower.hop, engine));
  const idle = findIdle(line);
  if (idle === null || idle.rpm <= HIGHEST_IDLE[4]) return plain;
  const near = (rpm: number): boolean => Math.abs(octaves(rpm / idle.rpm)) < NEAR_IDLE;
  const own = plain.frames.filter(({ rpm, halfSalience }) => near(rpm) && !Number.isNaN(halfSalience));
  const half = own.reduce((sum, { halfSalience }) => sum + halfSalience, 0);
  const whole = own.reduce((sum, { salience }) => sum + salience, 0);
  if (!(half > LEAST_HALF * whole)) return plain;
  return again((rpm) => (near(rpm) ? DISFAVOUR : 0));
}

/** A two-stroke that skips all the time sounds like one at half the speed; the bike's known idle tells that it may. */
function hintDisagrees({ idleHint, strokes }: EngineSound, line: SpeedLine): boolean {
  if (idleHint === null || strokes === 4) return false;
  return Math.abs(octaves(lowSteady(line) / (idleHint / 2))) < HALF_HINT;
}

const lowSteady = (line: SpeedLine): number => {
  const speeds: number[] = [];
  for (let i = 0; i < line.rpm.length; i++) if (Math.abs(line.slope[i]!) < 0.24) speeds.push(line.rpm[i]!);
  return share(speeds, 0.2);
};

function conclude({ follower, frames }: Followed, engine: EngineSound): Omit<Heard, "seconds"> {
  const track = speedTrack(frames, follower.hop, engine);
  const line = speedLine(track);
  const idle = findIdle(line);
  const doubts = [...doubtsAbout(track, line, idle, follower.flattened(), engine)];
  if (hintDisagrees(engine, line)) {
    doubts.push(
      refuse(
        "hint-disagrees",
        "The idle sounds like half of the idle speed on the bike's card. Check that figure, or read the idle with a counter, and record again.",
      ),
    );
  }
  const events = doubts.length > 0 || idle === null ? [] : eventsIn(track, line, idle, engine);
  return { track, events, doubts, picture: pictureOf(follower, frames) };
}

function eventsIn(
  track: SpeedTrack,
  line: SpeedLine,
  idle: NonNullable<ReturnType<typeof findIdle>>,
  engine: EngineSound,
): SoundEvent[] {
  const snaps = findSnaps(line, idle.rpm);
  const chops = findChops(line, idle.rpm, snaps);
  const found = [
    idle,
    findHunting(line, idle.rpm),
    ...snaps,
    ...chops,
    findStall(line, idle, chops),
    ...findSkipping(track),
  ];
  return found
    .filter((event) => event !== null)
    .map((event) => withConfidence(event, line, engine))
    .sort((a, b) => a.at - b.at);
}

function pictureOf(follower: SpeedFollower, frames: readonly HeardFrame[]): SoundPicture | null {
  const { lowest, steps, size } = follower.picture;
  if (frames[0]?.picture == null) return null;
  const values = new Uint8Array(size * frames.length);
  frames.forEach(({ picture }, i) => {
    values.set(picture!, i * size);
  });
  return { lowest, steps, rows: size, frames: frames.length, values };
}
