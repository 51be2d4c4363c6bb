import type { Chance } from "./chance.ts";

/** What lies between the engine and the file. */
export interface Path {
  /** Ground or wall echoes: "open" ground, or a "shed". */
  readonly place: "open" | "shed";
  /** Microphone: low end cut, Hz, and top, Hz. */
  readonly from: number;
  readonly to: number;
  /** Automatic gain, as phones have it. */
  readonly gain: boolean;
  /** Hard limit as a share of the loudest peak; 1 is none. */
  readonly clip: number;
  /** Telephone coding: 8 bits, µ-law. */
  readonly telephone: boolean;
}

export const anyPath = (chance: Chance): Path => ({
  place: chance.happens(0.2) ? "shed" : "open",
  from: chance.pick([30, 80, 120, 200]),
  to: chance.pick([3400, 6500, 12000]),
  gain: chance.happens(0.6),
  clip: chance.happens(0.15) ? chance.between(0.3, 0.8) : 1,
  telephone: chance.happens(0.08),
});

/** Echoes of the place. */
export function throughPlace(
  x: Float64Array,
  place: Path["place"],
  rate: number,
  chance: Chance,
): Float64Array {
  // A phone half a metre to a metre away in a shed hears the echoes a third to as loud as the bike itself.
  const size = chance.between(0.25, 0.45);
  const taps =
    place === "open"
      ? [{ delay: chance.between(0.001, 0.004), size: chance.between(0.2, 0.6) }]
      : Array.from({ length: 40 }, () => {
          const delay = chance.between(0.003, 0.35);
          return { delay, size: size * chance.normal() * Math.exp(-delay / 0.09) };
        });
  const y = x.slice();
  for (const { delay, size } of taps) {
    const d = Math.round(delay * rate);
    for (let i = d; i < x.length; i++) y[i]! += size * x[i - d]!;
  }
  return y;
}

/** Second-order low cut and top cut. */
export function throughCapsule(x: Float64Array, { from, to }: Path, rate: number): Float64Array {
  return butterworth(butterworth(x, from, "high", rate), Math.min(to, 0.45 * rate), "low", rate);
}

function butterworth(x: Float64Array, cut: number, kind: "high" | "low", rate: number): Float64Array {
  const w = Math.tan((Math.PI * cut) / rate);
  const scale = 1 / (1 + Math.SQRT2 * w + w * w);
  const b0 = kind === "high" ? scale : w * w * scale;
  const b1 = kind === "high" ? -2 * b0 : 2 * b0;
  const a1 = 2 * (w * w - 1) * scale;
  const a2 = (1 - Math.SQRT2 * w + w * w) * scale;
  const y = new Float64Array(x.length);
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let i = 0; i < x.length; i++) {
    const value = b0 * (x[i]! + x2) + b1 * x1 - a1 * y1 - a2 * y2;
    x2 = x1;
    x1 = x[i]!;
    y2 = y1;
    y1 = value;
    y[i] = value;
  }
  return y;
}

/** Gain, limit and number of bits: what the phone makes of it. */
export function throughPhone(x: Float64Array, path: Path, rate: number): Float32Array {
  const y = path.gain ? automaticGain(x, rate) : x.slice();
  let peak = 1e-9;
  for (const value of y) peak = Math.max(peak, Math.abs(value));
  const limit = path.clip * peak;
  return Float32Array.from(y, (value) => {
    const cut = Math.max(-limit, Math.min(limit, value)) / limit;
    const loud = 0.9 * cut;
    return path.telephone ? telephone(loud) : Math.round(loud * 32767) / 32768;
  });
}

/** Down within 20 ms, up within 0.6 s. */
function automaticGain(x: Float64Array, rate: number): Float64Array {
  const quick = 1 - Math.exp(-1 / (0.02 * rate));
  const slow = 1 - Math.exp(-1 / (0.6 * rate));
  let level = 1e-4;
  return x.map((value) => {
    const power = value * value;
    level += (power > level ? quick : slow) * (power - level);
    return (0.2 * value) / Math.sqrt(level + 1e-8);
  });
}

const telephone = (value: number): number => {
  const size = Math.log(1 + 255 * Math.abs(value)) / Math.log(256);
  const steps = Math.round(size * 127) / 127;
  return (Math.sign(value) * (256 ** steps - 1)) / 255;
};
