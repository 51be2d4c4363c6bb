import { listen, readWave } from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";

/** A WAV file of one byte a sample in that coding, and the value its first sample is read as, of 32 768. */
function coded(coding: 6 | 7, byte: number): number {
  const file = new DataView(new ArrayBuffer(46));
  const name = (at: number, letters: string) => {
    for (let i = 0; i < letters.length; i++) file.setUint8(at + i, letters.charCodeAt(i));
  };
  name(0, "RIFF");
  name(8, "WAVEfmt ");
  file.setUint32(16, 16, true);
  file.setUint16(20, coding, true);
  file.setUint16(22, 1, true);
  file.setUint32(24, 8000, true);
  file.setUint16(34, 8, true);
  name(36, "data");
  file.setUint32(40, 1, true);
  file.setUint8(44, byte);
  const read = readWave(new Uint8Array(file.buffer));
  return read.ok ? read.value.channels[0]![0]! * 32768 : Number.NaN;
}

/** The middle speed read from plain pulses, so many a second. */
function speedOf(pulses: number, strokes: 2 | 4): number {
  const rate = 48000;
  const samples = new Float32Array(6 * rate);
  for (let i = 0; i < samples.length; i++) {
    const since = (i / rate) % (1 / pulses);
    samples[i] = 0.8 * Math.exp(-since / 0.001) * Math.sin(2 * Math.PI * 500 * since);
  }
  const heard = listen(samples, rate, { strokes, cylinders: 1, idleHint: null }, { pictures: false });
  if (!heard.ok) return Number.NaN;
  const speeds = [...heard.value.track.rpm].filter((rpm) => rpm > 0).sort((a, b) => a - b);
  return speeds[Math.floor(speeds.length / 2)]!;
}

const law = (name: string, coding: 6 | 7, byte: number, want: number): ReferenceCheck => ({
  name,
  source: "ITU-T Recommendation G.711 (1988), decoder output values of tables 1 and 2, on a scale of 16 bits",
  standing: "memory",
  unit: "of 32768",
  want,
  within: 0.01,
  because: "whole numbers",
  got: () => coded(coding, byte),
});

const turning = (pulses: number, strokes: 2 | 4, want: number): ReferenceCheck => ({
  name: `${pulses} pulses a second from a ${strokes}-stroke single`,
  source: "60 seconds to a minute; a two-stroke fires every turn, a four-stroke every second one",
  standing: "computed by hand",
  unit: "1/min",
  want,
  within: 0.003,
  relative: true,
  because: "the median error aimed at",
  got: () => speedOf(pulses, strokes),
});

/** Sound files and engine speed against what was not made by us. */
export const SOUND_CHECKS: readonly ReferenceCheck[] = [
  law("µ-law, largest positive", 7, 0x80, 32124),
  law("µ-law, largest negative", 7, 0x00, -32124),
  law("A-law, largest positive", 6, 0xaa, 32256),
  law("A-law, smallest positive", 6, 0xd5, 8),
  turning(28, 2, 1680),
  turning(140, 2, 8400),
  turning(12.5, 4, 1500),
  turning(50, 4, 6000),
];
