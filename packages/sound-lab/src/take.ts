import { type Chance, chance } from "./chance.ts";
import { anyBuild, type Build, engineSound } from "./engine.ts";
import { anyPath, type Path, throughCapsule, throughPhone, throughPlace } from "./microphone.ts";
import { type NoiseKind, noise } from "./noises.ts";
import { crankshaft, type Piece, type Truth } from "./speed-script.ts";

export const STORIES = ["idle", "snaps", "dive", "hang", "stall", "bog", "skip", "hunt"] as const;
export type Story = (typeof STORIES)[number];

/** A made recording whose truth is known. */
export interface Take {
  readonly samples: Float32Array;
  readonly rate: number;
  readonly strokes: 2 | 4;
  readonly cylinders: 1 | 2;
  readonly story: Story;
  readonly truth: Truth;
  /** Idle wanted by the story. */
  readonly idleRpm: number;
  /** What the story put in, in order. */
  readonly planted: readonly Planted[];
}

export type Planted =
  | { readonly kind: "snap"; readonly at: number; readonly peakRpm: number }
  | { readonly kind: "chop"; readonly at: number }
  | { readonly kind: "hang"; readonly at: number; readonly seconds: number; readonly rpm: number }
  | { readonly kind: "dive"; readonly at: number; readonly percent: number }
  | { readonly kind: "bog"; readonly at: number; readonly percent: number }
  | { readonly kind: "hunting"; readonly percent: number }
  | { readonly kind: "stall"; readonly at: number };

export interface TakeSetting {
  readonly strokes?: 2 | 4;
  readonly cylinders?: 1 | 2;
  /** Decibels of the idle over the noise, after the microphone. */
  readonly snr?: number;
  readonly noise?: readonly NoiseKind[];
  readonly rate?: number;
  readonly build?: Partial<Build>;
  readonly path?: Partial<Path>;
  /** Another engine at this speed and this many decibels against ours. */
  readonly second?: { readonly rpm: number; readonly decibels: number };
  readonly idleSkip?: number;
  /** Metres a second past the microphone at 4 m; 0 stands still. */
  readonly passing?: number;
  /** A fixed idle instead of one drawn. */
  readonly idleRpm?: number;
  /** Seconds of the hang, instead of some drawn. */
  readonly hangSeconds?: number;
}

/** A recording of that story; everything not set is drawn from the seed. */
export function take(story: Story, seed: number, setting: TakeSetting = {}): Take {
  const luck = chance(seed * 7919 + story.length * 31);
  const strokes = setting.strokes ?? 2;
  const cylinders = setting.cylinders ?? 1;
  const rate = setting.rate ?? 48000;
  const drawn = setting.idleRpm ?? (strokes === 2 ? luck.between(1350, 2100) : luck.between(1250, 1900));
  const { pieces, planted } = storyOf(story, drawn, setting, luck);
  const truth = crankshaft(drawn, pieces, luck.between(0.004, 0.015), luck);
  const build = { ...anyBuild(luck, strokes, cylinders), ...setting.build };
  const path = { ...anyPath(luck), ...setting.path };
  let dry = engineSound(truth, build, rate, luck);
  if (setting.passing) dry = ridePast(dry, setting.passing, rate);
  const wet = throughCapsule(throughPlace(dry, path.place, rate, luck), path, rate);
  const quiet = rms(wet, 0, Math.floor(1.5 * rate));
  const mixed = wet;
  if (setting.second) {
    const other = crankshaft(
      setting.second.rpm,
      [{ seconds: truth.seconds, rpm: setting.second.rpm, way: "even", load: 0.1 }],
      0.008,
      luck,
    );
    const sound = throughCapsule(engineSound(other, anyBuild(luck, strokes), rate, luck), path, rate);
    mix(mixed, sound, (quiet / rms(sound, 0, sound.length)) * 10 ** (setting.second.decibels / 20));
  }
  const kinds = setting.noise ?? [luck.pick(["pink", "wind", "white"] as const)];
  const snr = setting.snr ?? luck.between(8, 25);
  for (const kind of kinds) {
    const raw = throughCapsule(noise(kind, mixed.length, rate, luck), path, rate);
    mix(mixed, raw, (quiet / Math.sqrt(kinds.length) / rms(raw, 0, raw.length)) * 10 ** (-snr / 20));
  }
  return {
    samples: throughPhone(mixed, path, rate),
    rate,
    strokes,
    cylinders,
    story,
    truth,
    idleRpm: drawn,
    planted,
  };
}

/** A recording without any engine. */
export function noEngine(
  kind: NoiseKind,
  seed: number,
  seconds = 8,
  rate = 48000,
): { samples: Float32Array; rate: number } {
  const luck = chance(seed * 104729 + kind.length);
  const path = anyPath(luck);
  const sound = throughCapsule(
    throughPlace(noise(kind, seconds * rate, rate, luck), path.place, rate, luck),
    path,
    rate,
  );
  const floor = noise("pink", sound.length, rate, luck);
  mix(sound, floor, 10 ** (-luck.between(15, 40) / 20) * rms(sound, 0, sound.length));
  return { samples: throughPhone(sound, path, rate), rate };
}

const rms = (x: Float64Array, from: number, to: number): number => {
  let sum = 0;
  for (let i = from; i < Math.min(to, x.length); i++) sum += x[i]! * x[i]!;
  return Math.sqrt(sum / Math.max(1, Math.min(to, x.length) - from)) || 1e-9;
};

function mix(into: Float64Array, other: Float64Array, size: number): void {
  for (let i = 0; i < into.length; i++) into[i]! += size * other[i]!;
}

/** Goes past the microphone: nearer and farther, with the sound's own delay (Doppler). */
function ridePast(x: Float64Array, speed: number, rate: number): Float64Array {
  const middle = x.length / rate / 2;
  return x.map((_, i) => {
    const t = i / rate;
    const distance = Math.hypot(4, speed * (t - middle));
    const source = (t - distance / 343) * rate;
    const whole = Math.floor(source);
    if (whole < 0 || whole + 1 >= x.length) return 0;
    const f = source - whole;
    return ((x[whole]! * (1 - f) + x[whole + 1]! * f) * 4) / distance;
  });
}

function storyOf(
  story: Story,
  idle: number,
  setting: TakeSetting,
  luck: Chance,
): { pieces: Piece[]; planted: Planted[] } {
  const pieces: Piece[] = [];
  const planted: Planted[] = [];
  let now = 0;
  const skip = setting.idleSkip ?? 0;
  const add = (piece: Piece): void => {
    pieces.push(piece);
    now += piece.seconds;
  };
  const rest = (seconds: number): void => add({ seconds, rpm: idle, way: "s", load: 0.05, skip });
  const snapTo = (rpm: number): void => {
    planted.push({ kind: "snap", at: now, peakRpm: rpm });
    add({ seconds: luck.between(0.28, 0.7), rpm, way: luck.pick(["s", "even"] as const), load: 0.9 });
    add({ seconds: luck.between(0.15, 0.7), rpm: rpm * luck.between(0.98, 1.02), way: "s", load: 0.6 });
    planted.push({ kind: "chop", at: now });
  };
  const fallTo = (rpm: number, skipping = skip): void => {
    const high = pieces.at(-1)!.rpm;
    add({
      seconds: Math.max(0.35, Math.log2(high / rpm) / luck.between(2, 4)),
      rpm,
      way: luck.pick(["s", "decay"] as const),
      load: 0.02,
      skip: skipping,
    });
  };
  rest(luck.between(2.6, 3.6));
  const peak = (): number => luck.between(5500, 9500);
  switch (story) {
    case "idle":
      rest(luck.between(3, 6));
      break;
    case "snaps":
      for (let i = 0; i < 3; i++) {
        snapTo(peak());
        fallTo(idle);
        rest(luck.between(1.6, 2.8));
      }
      break;
    case "dive":
      for (let i = 0; i < 2; i++) {
        snapTo(peak());
        const percent = luck.between(9, 30);
        fallTo(idle * (1 - percent / 100));
        planted.push({ kind: "dive", at: now, percent });
        add({ seconds: luck.between(0.5, 1.4), rpm: idle, way: "s", load: 0.03, skip });
        rest(luck.between(1.5, 2.5));
      }
      break;
    case "hang":
      for (let i = 0; i < 2; i++) {
        snapTo(peak());
        const rpm = idle * luck.between(1.35, 1.75);
        fallTo(rpm);
        const seconds = setting.hangSeconds ?? luck.between(0.7, 3.2);
        planted.push({ kind: "hang", at: now, seconds, rpm });
        add({ seconds, rpm: rpm * luck.between(0.97, 1), way: "even", load: 0.05 });
        add({ seconds: luck.between(0.3, 0.8), rpm: idle, way: "s", load: 0.03, skip });
        rest(luck.between(1.6, 2.6));
      }
      break;
    case "bog":
      for (let i = 0; i < 2; i++) {
        const percent = luck.between(9, 25);
        planted.push({ kind: "bog", at: now, percent });
        add({ seconds: luck.between(0.2, 0.4), rpm: idle * (1 - percent / 100), way: "s", load: 0.3, skip });
        snapTo(peak());
        fallTo(idle);
        rest(luck.between(1.6, 2.6));
      }
      break;
    case "stall":
      snapTo(peak());
      fallTo(idle * luck.between(0.75, 0.95));
      add({ seconds: luck.between(0.3, 0.7), rpm: luck.between(500, 750), way: "even", load: 0.02 });
      planted.push({ kind: "stall", at: now });
      add({ seconds: luck.between(1.6, 2.6), rpm: 100, way: "even", load: 0, dead: true });
      break;
    case "skip":
      snapTo(8200);
      planted.pop();
      add({
        seconds: luck.between(2, 3),
        rpm: 8200 * luck.between(0.95, 1.05),
        way: "s",
        load: 0.7,
        skip: luck.between(0.75, 1),
      });
      planted.push({ kind: "chop", at: now });
      fallTo(idle);
      rest(2);
      break;
    case "hunt": {
      const percent = luck.between(8, 16);
      const swing = luck.between(0.4, 0.9);
      planted.push({ kind: "hunting", percent });
      for (let i = 0; i < 8; i++) {
        add({
          seconds: swing,
          rpm: idle * (1 + (i % 2 === 0 ? percent : -percent) / 100),
          way: "s",
          load: 0.05,
        });
      }
      rest(0.5);
      break;
    }
  }
  return { pieces, planted };
}
