import type { Chance } from "./chance.ts";

export const NOISES = ["pink", "wind", "hum", "voice", "claps", "music", "white"] as const;
export type NoiseKind = (typeof NOISES)[number];

/** A noise of that kind, of about unit power where it sounds. */
export function noise(kind: NoiseKind, n: number, rate: number, chance: Chance): Float64Array {
  const made = { pink, wind, hum, voice, claps, music, white }[kind](n, rate, chance);
  let power = 0;
  for (const value of made) power += value * value;
  const scale = 1 / Math.sqrt(power / n || 1);
  return made.map((value) => value * scale);
}

const white = (n: number, _rate: number, chance: Chance): Float64Array =>
  Float64Array.from({ length: n }, chance.normal);

function pink(n: number, _rate: number, chance: Chance): Float64Array {
  // Rows that change half as often each (R. Voss, J. McCartney).
  const rows = new Float64Array(12);
  return Float64Array.from({ length: n }, (_, i) => {
    let bit = 0;
    while (bit < 11 && ((i >> bit) & 1) === 0) bit += 1;
    rows[bit] = chance.normal();
    let sum = chance.normal();
    for (const row of rows) sum += row;
    return sum;
  });
}

/** Rumble of air over the microphone, in gusts. */
function wind(n: number, rate: number, chance: Chance): Float64Array {
  const k = 1 - Math.exp((-2 * Math.PI * chance.between(60, 180)) / rate);
  let [a, b, gust, wanted] = [0, 0, 1, 1];
  return Float64Array.from({ length: n }, (_, i) => {
    if (i % Math.round(rate * 0.25) === 0) wanted = Math.exp(chance.normal() * 0.7);
    gust += (wanted - gust) * (3 / rate);
    const x = chance.normal();
    a += k * (x - a);
    b += k * (a - b);
    return gust * (b + 0.02 * x);
  });
}

function hum(n: number, rate: number, chance: Chance): Float64Array {
  const mains = chance.pick([50, 60]);
  const parts = Array.from({ length: 12 }, (_, h) => ({
    f: mains * (h + 1),
    a: chance.uniform() / (h + 1) ** 0.5,
    p: chance.between(0, 6.28),
  }));
  return Float64Array.from({ length: n }, (_, i) => {
    let sum = 0.02 * chance.normal();
    for (const { f, a, p } of parts) sum += a * Math.sin((2 * Math.PI * f * i) / rate + p);
    return sum;
  });
}

/** Someone talking: a glottal buzz through three moving formants, in syllables with pauses. */
function voice(n: number, rate: number, chance: Chance): Float64Array {
  const base = chance.pick([chance.between(85, 140), chance.between(160, 240)]);
  const out = new Float64Array(n);
  const bands = [0, 1, 2].map(() => ({ y1: 0, y2: 0 }));
  let phase = 0;
  let i = 0;
  while (i < n) {
    const length = Math.floor(rate * chance.between(0.09, 0.3));
    const silent = chance.happens(0.22);
    const voiced = chance.happens(0.8);
    const formants = [chance.between(280, 800), chance.between(900, 2200), chance.between(2300, 3200)];
    const glide = chance.between(-0.35, 0.35);
    const pitch = base * Math.exp(chance.normal() * 0.12);
    for (let k = 0; k < length && i < n; k++, i++) {
      const u = k / length;
      const f0 = pitch * Math.exp(glide * (u - 0.5)) * (1 + 0.01 * Math.sin((i / rate) * 35));
      phase += f0 / rate;
      let source = 0.05 * chance.normal();
      if (phase >= 1) {
        phase -= 1;
        source += voiced ? 8 : 0;
      }
      if (!voiced) source = 0.8 * chance.normal();
      let y = 0;
      bands.forEach((band, b) => {
        const w = (2 * Math.PI * formants[b]!) / rate;
        const r = Math.exp((-Math.PI * (80 + 60 * b)) / rate);
        const value = source * (1 - r) + 2 * r * Math.cos(w) * band.y1 - r * r * band.y2;
        band.y2 = band.y1;
        band.y1 = value;
        y += value / (b + 1);
      });
      out[i] = silent ? 0 : y * Math.sin(Math.PI * u) ** 0.6;
    }
  }
  return out;
}

/** Claps or hammering at a steady rate. */
function claps(n: number, rate: number, chance: Chance): Float64Array {
  const every = 1 / chance.between(1.5, 9);
  const out = new Float64Array(n);
  for (let t = 0.1; t < n / rate; t += every * (1 + 0.02 * chance.normal())) {
    const first = Math.floor(t * rate);
    for (let k = 0; k < 0.05 * rate && first + k < n; k++)
      out[first + k]! += chance.normal() * Math.exp(-k / (0.006 * rate));
  }
  return out;
}

/** A band: bass line, chords and a drum, at a tempo. */
function music(n: number, rate: number, chance: Chance): Float64Array {
  const out = new Float64Array(n);
  const beat = 60 / chance.between(80, 160);
  const root = 41.2 * 2 ** (Math.floor(chance.between(0, 12)) / 12);
  const steps = [0, 3, 5, 7, 10, 12];
  const note = (start: number, seconds: number, f: number, size: number): void => {
    const first = Math.floor(start * rate);
    for (let k = 0; k < seconds * rate && first + k < n; k++) {
      const t = k / rate;
      let y = 0;
      for (let h = 1; h <= 6; h++) y += Math.sin(2 * Math.PI * f * h * t) / h;
      out[first + k]! += size * y * Math.exp(-t / (0.6 * seconds)) * Math.min(1, t / 0.005);
    }
  };
  for (let t = 0; t < n / rate; t += beat / 2) {
    if (chance.happens(0.8)) note(t, beat * 0.5, root * 2 ** (chance.pick(steps) / 12), 0.5);
    const whole = Math.round((t / beat) * 2) % 4 === 0;
    if (whole)
      for (const step of [0, 4, 7])
        note(t, beat * 2, root * 4 * 2 ** ((chance.pick(steps) + step) / 12), 0.2);
    const first = Math.floor(t * rate);
    for (let k = 0; k < 0.04 * rate && first + k < n; k++) {
      out[first + k]! +=
        (whole ? Math.sin((2 * Math.PI * 60 * k) / rate) : 0.4 * chance.normal()) *
        Math.exp(-k / (0.012 * rate));
    }
  }
  return out;
}
