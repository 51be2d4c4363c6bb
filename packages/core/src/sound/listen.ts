import { accept, type Outcome, type Refusal, refuse } from "../units/outcome.ts";
import { findChops } from "./chops.ts";
import { doubtsAbout, type SoundDoubt } from "./doubts.ts";
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
  /** The sound was read at twice the speed it seems to have, because the bike's idle is known. */
  readonly doubled: boolean;
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
/** The other reading must explain the sound better than the plain one by this much to be taken; score of the path. */
const CLEARLY = 3;

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
  const plain = follow(samples, rate, engine, null, pictures);
  const chosen = withHint(plain, samples, rate, engine, pictures);
  return accept({ seconds, ...conclude(chosen, engine) });
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

interface Chosen extends Followed {
  readonly doubled: boolean;
  readonly disagrees: boolean;
}

/** A two-stroke that skips all the time sounds like one at half the speed: the bike's known idle decides, if the sound lets it. */
function withHint(
  plain: Followed,
  samples: Float32Array,
  rate: number,
  engine: EngineSound,
  pictures: boolean,
): Chosen {
  const hint = engine.idleHint;
  if (hint === null || engine.strokes === 4) return { ...plain, doubled: false, disagrees: false };
  const line = speedLine(speedTrack(plain.frames, plain.follower.hop, engine));
  const low = lowSteady(line);
  if (!(Math.abs(octaves(low / (hint / 2))) < HALF_HINT))
    return { ...plain, doubled: false, disagrees: false };
  const penalty = (rpm: number): number => Math.min(3, 3 * Math.max(0, octaves((0.72 * hint) / rpm)));
  const other = follow(samples, rate, engine, penalty, pictures);
  const gain = other.follower.score() - plain.follower.score();
  if (gain > CLEARLY) return { ...other, doubled: true, disagrees: false };
  return { ...plain, doubled: false, disagrees: true };
}

const lowSteady = (line: SpeedLine): number => {
  const speeds: number[] = [];
  for (let i = 0; i < line.rpm.length; i++) if (Math.abs(line.slope[i]!) < 0.24) speeds.push(line.rpm[i]!);
  return share(speeds, 0.2);
};

function conclude(
  { follower, frames, doubled, disagrees }: Chosen,
  engine: EngineSound,
): Omit<Heard, "seconds"> {
  const track = speedTrack(frames, follower.hop, engine);
  const line = speedLine(track);
  const idle = findIdle(line);
  const doubts = [...doubtsAbout(track, line, idle, follower.flattened(), engine)];
  if (disagrees) {
    doubts.push(
      refuse(
        "hint-disagrees",
        "The idle sounds like half of the idle speed on the bike's card. Check that figure, or read the idle with a counter, and record again.",
      ),
    );
  }
  const events = doubts.length > 0 || idle === null ? [] : eventsIn(track, line, idle, engine);
  return { track, events, doubts, doubled, picture: pictureOf(follower, frames) };
}

function eventsIn(
  track: SpeedTrack,
  line: SpeedLine,
  idle: NonNullable<ReturnType<typeof findIdle>>,
  engine: EngineSound,
): SoundEvent[] {
  const snaps = findSnaps(line, idle.rpm);
  const found = [
    idle,
    findHunting(line, idle.rpm),
    ...snaps,
    ...findChops(line, idle.rpm, snaps),
    findStall(line, idle.rpm),
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
