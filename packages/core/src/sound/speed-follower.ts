import { log, power } from "../numerics/elementary.ts";
import { type EngineSound, firingsPerRpm, SPEED_RANGE } from "./engine-sound.ts";
import { engineStreams, REACH } from "./engine-streams.ts";
import { CHANGE_AHEAD, fastChange } from "./fast-change.ts";
import { firingGrid, STEPS } from "./firing-grid.ts";
import { salience } from "./salience.ts";
import { SLEWS, STEADY } from "./slews.ts";
import { type Decided, speedPath } from "./speed-path.ts";

/** Seconds after which what was heard is decided for good. */
export const DECIDED_AFTER = 2;
/** Teeth reach no further than this, Hz. */
const TOP = 800;
/** Rivals are looked for outside this many grid steps of the speed, and of its half and its double. */
const OWN_WIDTH = 6;
const OCTAVE_WIDTH = 3;

/** What was heard at one moment. */
export interface HeardFrame {
  /** Seconds from the start of the sound. */
  readonly at: number;
  /** Engine speed, revolutions a minute; 0 when none was heard. */
  readonly rpm: number;
  /** Octaves a second the frame was read at. */
  readonly slew: number;
  /** Firing every second time only. */
  readonly skipping: boolean;
  /** How well the speed explains the sound: noise alone seldom passes 3, a clear engine has 6 to 12. */
  readonly salience: number;
  /** How much better than the best other speed, what a penalty takes off that one included. */
  readonly margin: number;
  /** How much better than the best speed that is neither half nor double: those may be the same engine. */
  readonly apart: number;
  /** Part of the evidence that lies in the sound itself, not in its beat alone; NaN when no speed was heard. */
  readonly toneShare: number;
  /** How well half the firing frequency would explain the sound; NaN when it is not looked for or no speed was heard. */
  readonly halfSalience: number;
  /** Loudness above 350 Hz, decibels against full scale. */
  readonly loudness: number;
  /** How far each frequency stood out, 0 to 255, lowest first; null unless pictures were asked for. */
  readonly picture: Uint8Array | null;
}

/** Reads engine speed from sound as it comes in, in bounded memory. */
export interface SpeedFollower {
  /** Seconds from frame to frame. */
  readonly hop: number;
  /** Takes more sound; gives the frames decided by it, DECIDED_AFTER seconds late. */
  readonly push: (samples: Float32Array) => readonly HeardFrame[];
  /** Ends the sound; gives the frames that were still open. */
  readonly finish: () => readonly HeardFrame[];
  /** The latest speed, about half a second late; a later decision may differ. Null: no engine heard. */
  readonly newest: () => HeardFrame | null;
  /** Fraction of samples at the very top of the range. */
  readonly flattened: () => number;
  readonly seconds: () => number;
  /** Lowest frequency of a picture and its steps to an octave. */
  readonly picture: { readonly lowest: number; readonly steps: number; readonly size: number };
}

export interface FollowerSetting {
  /** Salience taken off a speed (revolutions a minute), when another reading is favoured; null: none. */
  readonly penalty: ((rpm: number) => number) | null;
  readonly pictures: boolean;
  /** Seconds after which a frame is decided, instead of DECIDED_AFTER. */
  readonly decidedAfter?: number;
}

/** @param rate samples a second, at least 6000 */
export function speedFollower(engine: EngineSound, rate: number, setting: FollowerSetting): SpeedFollower {
  const streams = engineStreams(rate);
  const top = Math.min(TOP, 0.42 * streams.rate);
  const grid = firingGrid(engine, top);
  const comb = salience(grid, streams.rate, top, setting.pictures);
  const perRpm = firingsPerRpm(engine);
  const speeds = grid.size - grid.speedsFrom;
  const rpmOf = (bin: number): number => SPEED_RANGE.lowest * power(2, bin / STEPS);
  const hop = streams.hop / streams.rate;
  const lag = Math.round((setting.decidedAfter ?? DECIDED_AFTER) / hop);
  const penalty =
    setting.penalty === null
      ? null
      : Float64Array.from({ length: speeds }, (_, b) => setting.penalty!(rpmOf(b)));
  const path = speedPath({
    speeds,
    speedsFrom: grid.speedsFrom,
    maySkip: engine.strokes === 2,
    hop,
    lag,
    penalty,
  });
  const change = fastChange();

  const slots = lag + 2 * CHANGE_AHEAD;
  const allRows = new Float64Array(slots * SLEWS.length * grid.size);
  const rows = Array.from({ length: slots }, (_, slot) =>
    SLEWS.map((_, slew) => {
      const from = (slot * SLEWS.length + slew) * grid.size;
      return allRows.subarray(from, from + grid.size);
    }),
  );
  const read = Array.from({ length: slots }, () => new Uint8Array(SLEWS.length));
  const pictures = setting.pictures ? Array.from({ length: slots }, () => new Uint8Array(grid.reach)) : null;
  const loudness = new Float64Array(slots);
  const offered: (Float64Array | null)[] = SLEWS.map(() => null);
  const reach = Math.ceil(REACH * streams.rate) + 4;
  let steady = 0;
  let placed = 0;
  let decided = 0;

  const readSteady = (frame: number): void => {
    const slot = frame % slots;
    const row = rows[slot]![STEADY]!;
    comb.row(streams, frame * streams.hop, STEADY, row);
    read[slot]!.fill(0);
    read[slot]![STEADY] = 1;
    let best = 0;
    for (let i = 1; i < grid.size; i++) if (row[i]! > row[best]!) best = i;
    change.tell(best, row[best]!);
    loudness[slot] = loudnessAt(frame);
    if (pictures !== null) {
      const into = pictures[slot]!;
      for (let i = 0; i < grid.reach; i++)
        into[i] = Math.max(0, Math.min(255, Math.round(comb.picture[i]! * 64)));
    }
  };

  const loudnessAt = (frame: number): number => {
    const { level } = streams;
    let sum = 0;
    let count = 0;
    for (let i = Math.max(0, 2 * frame - 2); i <= 2 * frame + 1 && i < level.end; i++) {
      sum += level.kept[i - level.first]!;
      count += 1;
    }
    return count === 0 || sum < 1e-20 ? -200 : (10 / LOG_10) * log(sum / count);
  };

  const place = (frame: number): Decided | null => {
    const slot = frame % slots;
    if (change.at(frame)) {
      for (let slew = 0; slew < SLEWS.length; slew++) {
        if (slew === STEADY) continue;
        comb.row(streams, frame * streams.hop, slew, rows[slot]![slew]!);
        read[slot]![slew] = 1;
      }
    }
    for (let slew = 0; slew < SLEWS.length; slew++)
      offered[slew] = read[slot]![slew] ? rows[slot]![slew]! : null;
    return path.take(offered);
  };

  const heard = (frame: number, { bin, slew, skipping }: Decided): HeardFrame => {
    const slot = frame % slots;
    const row = read[slot]![slew] ? rows[slot]![slew]! : rows[slot]![STEADY]!;
    const common = {
      at: frame * hop,
      loudness: loudness[slot]!,
      picture: pictures === null ? null : pictures[slot]!.slice(),
    };
    if (bin < 0)
      return {
        ...common,
        rpm: 0,
        slew: 0,
        skipping: false,
        salience: peak(row, -1000, 0),
        margin: 0,
        apart: 0,
        toneShare: Number.NaN,
        halfSalience: Number.NaN,
      };
    const own = bin + grid.speedsFrom - (skipping ? STEPS : 0);
    const { frequency, toneShare } = comb.refine(streams, frame * streams.hop, slew, grid.frequency(own));
    return {
      ...common,
      rpm: (frequency / perRpm) * (skipping ? 2 : 1),
      slew: SLEWS[slew]!,
      skipping,
      salience: row[own]!,
      margin: row[own]! - peak(row, own, 0),
      apart: row[own]! - peak(row, own, OCTAVE_WIDTH),
      toneShare,
      halfSalience: row[own - STEPS] ?? Number.NaN,
    };
  };

  const peak = (row: Float64Array, own: number, octaveWidth: number): number => {
    let best = -Infinity;
    for (let i = 0; i < row.length; i++) {
      const away = Math.abs(i - own);
      if (away <= OWN_WIDTH || Math.abs(away - STEPS) < octaveWidth) continue;
      const value = row[i]! - (penalty?.[i - grid.speedsFrom] ?? 0);
      if (value > best) best = value;
    }
    return best;
  };

  const give = (verdict: Decided): HeardFrame => {
    const frame = heard(decided, verdict);
    decided += 1;
    return frame;
  };

  const run = (lastMiddle: number): HeardFrame[] => {
    const out: HeardFrame[] = [];
    const known = Math.min(streams.wave.end, streams.envelope.end) - reach;
    while (steady * streams.hop <= Math.min(known, lastMiddle)) {
      readSteady(steady);
      steady += 1;
      if (steady - placed > CHANGE_AHEAD) {
        const verdict = place(placed);
        placed += 1;
        if (verdict !== null) out.push(give(verdict));
      }
    }
    const oldest = decided * streams.hop - reach;
    streams.wave.forgetBefore(oldest);
    streams.envelope.forgetBefore(oldest);
    streams.level.forgetBefore(2 * decided - 4);
    return out;
  };

  return {
    hop,
    push(samples) {
      streams.push(samples);
      return run(Infinity);
    },
    finish() {
      const end = streams.seconds() * streams.rate;
      streams.finish();
      const out = run(end);
      while (placed < steady) {
        const verdict = place(placed);
        placed += 1;
        if (verdict !== null) out.push(give(verdict));
      }
      for (const verdict of path.finish()) out.push(give(verdict));
      return out;
    },
    newest: () => (placed === 0 ? null : nullIfSilent(heard(placed - 1, path.newest()))),
    flattened: streams.flattened,
    seconds: streams.seconds,
    picture: { lowest: grid.lowest, steps: STEPS, size: grid.reach },
  };
}

const nullIfSilent = (frame: HeardFrame): HeardFrame | null => (frame.rpm === 0 ? null : frame);

const LOG_10 = log(10);
