import type { Chance } from "./chance.ts";
import type { Truth } from "./speed-script.ts";

/** What the engine is made of; drawn anew for every clip. */
export interface Build {
  readonly strokes: 2 | 4;
  readonly cylinders: 1 | 2;
  /** Exhaust: metres of pipe and how much each end gives back. */
  readonly pipe: number;
  readonly pipeBack: number;
  /** Silencer: above this it takes away, Hz. */
  readonly silencer: number;
  /** Airbox: its note, Hz, and how it rings. */
  readonly box: number;
  readonly boxRing: number;
  /** Spread of pulse strength from cycle to cycle, shut throttle; half of it under load. */
  readonly uneven: number;
  /** Spread of each firing's moment, part of a turn. */
  readonly jitter: number;
  /** Chance of a misfire on a shut throttle. */
  readonly misfire: number;
  /** Loudness of mechanical clicks, intake roar and gear whine against the exhaust. */
  readonly clicks: number;
  readonly roar: number;
  readonly whine: number;
  /** Teeth of the primary drive. */
  readonly teeth: number;
  /** A chain turning on the stand: its links a turn of the crank, and how loud; 0 is none. */
  readonly chain: number;
  readonly chainLoud: number;
}

export function anyBuild(chance: Chance, strokes: 2 | 4, cylinders: 1 | 2 = 1): Build {
  return {
    strokes,
    cylinders,
    pipe: chance.between(0.5, strokes === 2 ? 1.1 : 1.8),
    pipeBack: chance.between(0.25, 0.7),
    silencer: chance.between(900, 4000),
    box: chance.between(70, 260),
    boxRing: chance.between(1.5, 6),
    uneven: chance.between(0.12, 0.4),
    jitter: chance.between(0.004, 0.018),
    misfire: strokes === 2 ? chance.between(0, 0.12) : chance.between(0, 0.03),
    clicks: chance.between(0.02, 0.15),
    roar: chance.between(0.05, 0.35),
    whine: chance.between(0, 0.03),
    teeth: chance.pick([17, 18, 19, 20, 22, 23]),
    chain: chance.happens(0.2) ? chance.between(2.1, 4.7) : 0,
    chainLoud: chance.between(0.002, 0.012),
  };
}

/** The sound at the end of the pipe and around the engine, unscaled. */
export function engineSound(truth: Truth, build: Build, rate: number, chance: Chance): Float64Array {
  const n = Math.floor(truth.seconds * rate);
  const exhaust = new Float64Array(n + rate);
  const intake = new Float64Array(n + rate);
  const clicks = new Float64Array(n + rate);
  fire(truth, build, rate, chance, exhaust, intake, clicks);
  throughPipe(exhaust, build, rate);
  ring(intake, build.box, build.boxRing, rate);
  const modes = [chance.between(700, 1600), chance.between(1600, 3200), chance.between(3200, 5200)];
  const rattle = new Float64Array(n + rate);
  for (const mode of modes) {
    const one = clicks.slice();
    ring(one, mode, chance.between(8, 25), rate);
    for (let i = 0; i < one.length; i++) rattle[i]! += one[i]!;
  }
  const sound = new Float64Array(n);
  let gear = 0;
  let link = 0;
  for (let i = 0; i < n; i++) {
    const rev = at(truth.rpm, i / rate) / 60;
    gear += (2 * Math.PI * build.teeth * rev) / rate;
    link += (2 * Math.PI * build.chain * rev) / rate;
    const loud = 0.3 + at(truth.load, i / rate);
    const tones = rev > 0 ? build.whine * loud * (Math.sin(gear) + 0.5 * Math.sin(2 * gear)) : 0;
    const chain =
      rev > 0 && build.chain > 0
        ? build.chainLoud * (Math.sin(link) + 0.6 * Math.sin(3 * link) + 0.4 * Math.sin(7 * link))
        : 0;
    sound[i] = exhaust[i]! + intake[i]! + rattle[i]! + tones + chain;
  }
  return sound;
}

const at = (values: Float64Array, seconds: number): number =>
  values[Math.max(0, Math.min(values.length - 1, Math.round(seconds * 1000)))]!;

/** Turns the crank and sets off what each turn sets off. */
function fire(
  truth: Truth,
  build: Build,
  rate: number,
  chance: Chance,
  exhaust: Float64Array,
  intake: Float64Array,
  clicks: Float64Array,
): void {
  const turnsAFiring = build.strokes === 2 ? 1 : 2;
  // Small marks of the crank where the bearings, the piston and the valves knock.
  const knocks = Array.from({ length: 3 }, () => ({ angle: chance.uniform(), size: chance.between(0.3, 1) }));
  let turn = chance.uniform();
  let lastWhole = Math.floor(turn);
  let skipped = false;
  for (let ms = 0; ms < truth.rpm.length - 1; ms++) {
    const rpm = truth.rpm[ms]!;
    const before = turn;
    turn += rpm / 60000;
    if (Math.floor(turn) === lastWhole || rpm < 60) continue;
    lastWhole = Math.floor(turn);
    const period = 60 / rpm;
    const when = ms / 1000 + ((lastWhole - before) / (turn - before)) * 0.001;
    const load = truth.load[ms]!;
    for (const knock of knocks) {
      click(
        clicks,
        (when + (knock.angle + 0.01 * chance.normal()) * period) * rate,
        build.clicks * knock.size * (0.6 + 0.4 * chance.uniform()),
      );
    }
    for (let cylinder = 0; cylinder < build.cylinders; cylinder++) {
      if (lastWhole % turnsAFiring !== 0) continue;
      const offset = (cylinder * turnsAFiring * period) / build.cylinders;
      const skips = truth.skip[ms]!;
      const skip: boolean = skips > 0 && !skipped && chance.happens(skips);
      const miss = load < 0.3 && chance.happens(build.misfire);
      skipped = skip;
      const spread = build.uneven * (load > 0.3 ? 0.5 : 1);
      let size = (0.35 + 1.3 * load) * Math.max(0.2, 1 + spread * chance.normal());
      if (skip) size *= 0.2;
      else if (miss) size *= 0.2;
      else if (skips > 0) size *= 1.2;
      const moment = when + offset + build.jitter * (load > 0.3 ? 0.5 : 1) * period * chance.normal();
      blow(exhaust, moment * rate, size, load, rate, chance);
      breathe(intake, (moment + 0.45 * period) * rate, build.roar * (0.25 + load), period, rate, chance);
    }
  }
}

/** Blow-down: a sharp rise, a fall, the gas swinging back below rest, and a hiss that dies with it. */
function blow(
  out: Float64Array,
  start: number,
  size: number,
  load: number,
  rate: number,
  chance: Chance,
): void {
  const rise = (0.00025 + 0.0005 * (1 - load)) * chance.between(0.8, 1.25);
  const fall = 0.0016 * chance.between(0.8, 1.3);
  const swing = 0.0045 * chance.between(0.8, 1.25);
  const length = Math.floor(0.022 * rate);
  const first = Math.ceil(start);
  for (let k = 0; k < length; k++) {
    const i = first + k;
    if (i < 0 || i >= out.length) continue;
    const t = (i - start) / rate;
    const push = (1 - Math.exp(-t / rise)) * Math.exp(-t / fall);
    const pull = 0.35 * (1 - Math.exp(-t / fall)) * Math.exp(-t / swing);
    const hiss = 0.25 * chance.normal() * Math.exp(-t / 0.002);
    out[i]! += size * (push - pull + hiss * push);
  }
}

/** One breath of the intake: a suck with a rush of air. */
function breathe(
  out: Float64Array,
  start: number,
  size: number,
  period: number,
  rate: number,
  chance: Chance,
): void {
  const length = Math.floor(Math.min(0.02, 0.5 * period) * rate);
  const first = Math.ceil(start);
  for (let k = 0; k < length; k++) {
    const i = first + k;
    if (i < 0 || i >= out.length) continue;
    const u = k / length;
    out[i]! -= size * Math.sin(Math.PI * u) ** 2 * (0.5 + 0.6 * chance.normal() * 0.5);
  }
}

function click(out: Float64Array, start: number, size: number): void {
  const i = Math.round(start);
  if (i >= 0 && i + 1 < out.length) {
    out[i]! += size;
    out[i + 1]! -= 0.6 * size;
  }
}

/** A pipe gives each pulse back again and again, softer and duller; the silencer takes the top away. */
function throughPipe(x: Float64Array, { pipe, pipeBack, silencer }: Build, rate: number): void {
  // Hot gas: sound at about 500 m/s, there and back.
  const delay = Math.max(2, Math.round(((2 * pipe) / 500) * rate));
  const dull = 1 - Math.exp((-2 * Math.PI * 2500) / rate);
  const soft = 1 - Math.exp((-2 * Math.PI * silencer) / rate);
  const line = new Float64Array(delay);
  let back = 0;
  let low = 0;
  for (let i = 0; i < x.length; i++) {
    const slot = i % delay;
    back += dull * (line[slot]! - back);
    const y = x[i]! - pipeBack * back;
    line[slot] = y;
    low += soft * (y - low);
    x[i] = 0.8 * low + 0.2 * y;
  }
}

/** A second-order ring at a note. */
function ring(x: Float64Array, note: number, q: number, rate: number): void {
  const w = (2 * Math.PI * note) / rate;
  const alpha = Math.sin(w) / (2 * q);
  const a0 = 1 + alpha;
  const [b0, a1, a2] = [alpha / a0, (-2 * Math.cos(w)) / a0, (1 - alpha) / a0];
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const y = b0 * 3 * (x[i]! - x2) - a1 * y1 - a2 * y2;
    x2 = x1;
    x1 = x[i]!;
    y2 = y1;
    y1 = y;
    x[i] = y;
  }
}
