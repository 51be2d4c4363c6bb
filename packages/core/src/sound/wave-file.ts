import { accept, type Outcome, refuse } from "../units/outcome.ts";

/** Sound as samples, one array a channel, full scale at ±1. */
export interface Clip {
  /** Samples a second. */
  readonly rate: number;
  readonly channels: readonly Float32Array[];
  /** True: the file ends before the length its header promises; what is there was read. */
  readonly cutShort: boolean;
}

export type WaveRefusal = "not-wave" | "unknown-coding" | "no-sound" | "odd-header";

const PCM = 1;
const FLOAT = 3;
const A_LAW = 6;
const MU_LAW = 7;
const EXTENSIBLE = 0xfffe;

interface Format {
  readonly coding: number;
  readonly channels: number;
  readonly rate: number;
  readonly bytes: number;
}

/**
 * Reads a RIFF/WAVE file: PCM of 8, 16, 24 or 32 bits, floats of 32 or 64 bits, A-law and µ-law, plain or
 * extensible, any number of channels to 16. Chunks it does not know are skipped, a missing pad byte and a data
 * chunk cut short or of unknown length (0 or all ones, as recorders that stream write) are forgiven.
 * Source: Microsoft/IBM Multimedia Programming Interface 1991 and Microsoft's WAVEFORMATEXTENSIBLE, from memory;
 * ITU-T G.711 for the two laws, from memory.
 */
export function readWave(file: Uint8Array): Outcome<Clip, WaveRefusal> {
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  const big = named(view, 0, "RIFX");
  if (!(named(view, 0, "RIFF") || big) || !named(view, 8, "WAVE")) {
    return refuse("not-wave", "This is not a WAV file. Give a WAV file, or one the browser can play.");
  }
  if (big)
    return refuse(
      "unknown-coding",
      "This WAV file has its bytes the other way round. Save it again as an ordinary WAV.",
    );
  let format: Format | null = null;
  let at = 12;
  while (at + 8 <= view.byteLength) {
    const size = view.getUint32(at + 4, true);
    const body = at + 8;
    if (named(view, at, "fmt ")) {
      const read = readFormat(view, body, size);
      if (!read.ok) return read;
      format = read.value;
    }
    if (named(view, at, "data")) {
      if (format === null)
        return refuse("odd-header", "This WAV file does not say how its sound is written. Save it again.");
      return readSamples(view, body, size, format);
    }
    at = nextChunk(view, body, size);
  }
  return refuse("no-sound", "This WAV file holds no sound. Record again.");
}

const named = (view: DataView, at: number, name: string): boolean => {
  if (at + 4 > view.byteLength) return false;
  for (let i = 0; i < 4; i++) if (view.getUint8(at + i) !== name.charCodeAt(i)) return false;
  return true;
};

/** Chunks of odd length are followed by a pad byte; some writers forget it. */
function nextChunk(view: DataView, body: number, size: number): number {
  const end = body + size;
  if (size % 2 === 0) return end;
  const looksLikeName = (at: number): boolean => {
    if (at + 4 > view.byteLength) return false;
    for (let i = 0; i < 4; i++) {
      const code = view.getUint8(at + i);
      if (code < 32 || code > 126) return false;
    }
    return true;
  };
  return looksLikeName(end) && !looksLikeName(end + 1) ? end : end + 1;
}

function readFormat(view: DataView, body: number, size: number): Outcome<Format, WaveRefusal> {
  const odd = (what: string) =>
    refuse("odd-header", `This WAV file's header is odd: ${what}. Save it again.`);
  if (size < 16 || body + 16 > view.byteLength) return odd("it is too short");
  let coding = view.getUint16(body, true);
  const channels = view.getUint16(body + 2, true);
  const rate = view.getUint32(body + 4, true);
  const bits = view.getUint16(body + 14, true);
  if (coding === EXTENSIBLE) {
    if (size < 40 || body + 40 > view.byteLength) return odd("it is too short for its kind");
    coding = view.getUint16(body + 24, true);
  }
  if (channels < 1 || channels > 16) return odd(`${channels} channels`);
  if (rate < 4000 || rate > 768000) return odd(`${rate} samples a second`);
  const bytes = Math.ceil(bits / 8);
  const known =
    (coding === PCM && bits >= 1 && bytes <= 4) ||
    (coding === FLOAT && (bits === 32 || bits === 64)) ||
    ((coding === A_LAW || coding === MU_LAW) && bits === 8);
  if (!known) {
    return refuse(
      "unknown-coding",
      `This WAV file is written in a way we do not read (kind ${coding}, ${bits} bits). Save it as 16-bit PCM.`,
    );
  }
  return accept({ coding, channels, rate, bytes });
}

function readSamples(view: DataView, body: number, size: number, format: Format): Outcome<Clip, WaveRefusal> {
  const there = view.byteLength - body;
  const unknownLength = size === 0 || size === 0xffffffff;
  const length = unknownLength ? there : Math.min(size, there);
  const frame = format.bytes * format.channels;
  const count = Math.floor(length / frame);
  if (count === 0) return refuse("no-sound", "This WAV file holds no sound. Record again.");
  const sample = sampleReader(view, format);
  const channels = Array.from({ length: format.channels }, (_, c) => {
    const samples = new Float32Array(count);
    for (let i = 0; i < count; i++) {
      const value = sample(body + i * frame + c * format.bytes);
      samples[i] = Number.isFinite(value) ? Math.max(-8, Math.min(8, value)) : 0;
    }
    return samples;
  });
  return accept({ rate: format.rate, channels, cutShort: !unknownLength && size > there });
}

function sampleReader(view: DataView, { coding, bytes }: Format): (at: number) => number {
  if (coding === FLOAT)
    return bytes === 8 ? (at) => view.getFloat64(at, true) : (at) => view.getFloat32(at, true);
  if (coding === A_LAW) return (at) => aLaw(view.getUint8(at));
  if (coding === MU_LAW) return (at) => muLaw(view.getUint8(at));
  if (bytes === 1) return (at) => (view.getUint8(at) - 128) / 128;
  if (bytes === 2) return (at) => view.getInt16(at, true) / 32768;
  if (bytes === 3) return (at) => (view.getInt16(at + 1, true) * 256 + view.getUint8(at)) / 8388608;
  return (at) => view.getInt32(at, true) / 2147483648;
}

/** ITU-T G.711 µ-law, a byte to ±1. */
function muLaw(byte: number): number {
  const code = ~byte & 0xff;
  const size = (((code & 15) << 3) + 132) << ((code >> 4) & 7);
  return ((code & 128) !== 0 ? 132 - size : size - 132) / 32768;
}

/** ITU-T G.711 A-law, a byte to ±1. */
function aLaw(byte: number): number {
  const code = byte ^ 0x55;
  const part = (code >> 4) & 7;
  const base = ((code & 15) << 4) + (part === 0 ? 8 : 264);
  const size = part > 1 ? base << (part - 1) : base;
  return ((code & 128) !== 0 ? size : -size) / 32768;
}
