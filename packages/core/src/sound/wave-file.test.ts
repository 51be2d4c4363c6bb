import { describe, expect, test } from "vitest";
import { readWave } from "./wave-file.ts";

type Chunk = readonly [name: string, body: readonly number[], size?: number];

const bytesOf = (text: string): number[] => [...text].map((letter) => letter.charCodeAt(0));
const little = (value: number, bytes: number): number[] =>
  Array.from({ length: bytes }, (_, i) => Math.floor(value / 256 ** i) % 256);

function file(chunks: readonly Chunk[], pad = true): Uint8Array {
  const out = [...bytesOf("RIFF"), 0, 0, 0, 0, ...bytesOf("WAVE")];
  for (const [name, body, size] of chunks) {
    out.push(...bytesOf(name), ...little(size ?? body.length, 4), ...body);
    if (pad && body.length % 2 === 1) out.push(0);
  }
  return Uint8Array.from(out);
}

const format = (coding: number, channels: number, rate: number, bits: number): Chunk => [
  "fmt ",
  [
    ...little(coding, 2),
    ...little(channels, 2),
    ...little(rate, 4),
    ...little((rate * channels * bits) / 8, 4),
    ...little((channels * bits) / 8, 2),
    ...little(bits, 2),
  ],
];

function floatBytes(value: number, bytes: 4 | 8): number[] {
  const view = new DataView(new ArrayBuffer(bytes));
  if (bytes === 4) view.setFloat32(0, value, true);
  else view.setFloat64(0, value, true);
  return [...new Uint8Array(view.buffer)];
}

function samples(bytes: Uint8Array): number[] {
  const read = readWave(bytes);
  if (!read.ok) throw new Error(read.reason);
  return [...read.value.channels[0]!];
}

describe("reading WAV files", () => {
  test.each([
    [8, [0, 128, 192], [-1, 0, 0.5]],
    [16, [0, 0x80, 0, 0, 0, 0x40], [-1, 0, 0.5]],
    [24, [0, 0, 0x80, 0, 0, 0, 0, 0, 0x40], [-1, 0, 0.5]],
    [32, [0, 0, 0, 0x80, 0, 0, 0, 0, 0, 0, 0, 0x40], [-1, 0, 0.5]],
  ])("reads PCM of %i bits", (bits, data, wanted) => {
    expect(samples(file([format(1, 1, 8000, bits), ["data", data]]))).toEqual(wanted);
  });

  test("counts the lowest byte of 24 bits and keeps the sign", () => {
    expect(samples(file([format(1, 1, 8000, 24), ["data", [1, 0, 0, 0xff, 0xff, 0xff]]]))).toEqual([
      Math.fround(1 / 8388608),
      Math.fround(-1 / 8388608),
    ]);
  });

  test.each([4, 8] as const)("reads floats of %i bytes", (bytes) => {
    const data = [0.25, -1.5, Number.NaN].flatMap((value) => floatBytes(value, bytes));
    expect(samples(file([format(3, 1, 48000, bytes * 8), ["data", data]]))).toEqual([0.25, -1.5, 0]);
  });

  // ITU-T G.711, tables 1a and 2a (from memory): the byte for the largest values and for zero.
  test("reads µ-law and A-law", () => {
    expect(samples(file([format(7, 1, 8000, 8), ["data", [0x80, 0x00, 0xff, 0x7f]]]))).toEqual([
      32124 / 32768,
      -32124 / 32768,
      0,
      0,
    ]);
    expect(samples(file([format(6, 1, 8000, 8), ["data", [0xaa, 0x2a, 0xd5, 0x55]]]))).toEqual([
      32256 / 32768,
      -32256 / 32768,
      8 / 32768,
      -8 / 32768,
    ]);
  });

  test("takes the coding of an extensible file from its longer header", () => {
    const [, body] = format(0xfffe, 1, 44100, 32);
    const extensible: Chunk = [
      "fmt ",
      [
        ...body,
        ...little(22, 2),
        ...little(32, 2),
        ...little(4, 4),
        ...little(3, 2),
        ...new Array(14).fill(0),
      ],
    ];
    expect(samples(file([extensible, ["data", floatBytes(0.75, 4)]]))).toEqual([0.75]);
    expect(
      readWave(
        file([
          ["fmt ", body],
          ["data", floatBytes(0.75, 4)],
        ]),
      ),
    ).toMatchObject({ ok: false, reason: "odd-header" });
  });

  test("keeps channels apart", () => {
    const read = readWave(file([format(1, 2, 8000, 8), ["data", [128, 192, 64, 128]]]));
    expect(read).toMatchObject({ ok: true, value: { rate: 8000, cutShort: false } });
    if (read.ok)
      expect(read.value.channels.map((channel) => [...channel])).toEqual([
        [0, -0.5],
        [0.5, 0],
      ]);
  });

  test("skips chunks it does not know, with their pad byte or without", () => {
    const chunks: Chunk[] = [["LIST", [1, 2, 3]], format(1, 1, 8000, 8), ["bext", [9]], ["data", [192]]];
    expect(samples(file(chunks))).toEqual([0.5]);
    expect(samples(file(chunks, false))).toEqual([0.5]);
  });

  test("reads what is there of a file cut short, and says so", () => {
    const read = readWave(file([format(1, 1, 8000, 16), ["data", [0, 0x40, 0], 100]], false));
    expect(read).toMatchObject({ ok: true, value: { cutShort: true } });
    if (read.ok) expect([...read.value.channels[0]!]).toEqual([0.5]);
  });

  test.each([0, 0xffffffff])("takes a length of %i to mean all that follows", (size) => {
    const read = readWave(file([format(1, 1, 8000, 8), ["data", [192, 64], size]]));
    expect(read).toMatchObject({ ok: true, value: { cutShort: false } });
    if (read.ok) expect([...read.value.channels[0]!]).toEqual([0.5, -0.5]);
  });

  test.each([
    ["not-wave", Uint8Array.from([])],
    ["not-wave", Uint8Array.from(bytesOf("RIFFxxxxAVI "))],
    ["unknown-coding", file([format(85, 1, 8000, 16), ["data", [0, 0]]])],
    ["unknown-coding", file([format(3, 1, 8000, 16), ["data", [0, 0]]])],
    ["odd-header", file([["data", [0, 0]]])],
    ["odd-header", file([format(1, 0, 8000, 16), ["data", [0, 0]]])],
    ["odd-header", file([format(1, 1, 3999, 16), ["data", [0, 0]]])],
    ["no-sound", file([format(1, 1, 8000, 16)])],
    ["no-sound", file([format(1, 1, 8000, 16), ["data", []]])],
  ])("refuses with %s", (reason, bytes) => {
    expect(readWave(bytes)).toMatchObject({ ok: false, reason });
  });

  test("never throws, whatever is cut off or changed", () => {
    const whole = file([format(1, 2, 8000, 24), ["data", new Array(60).fill(7)]]);
    for (let length = 0; length < whole.length; length++)
      expect(() => readWave(whole.slice(0, length))).not.toThrow();
    for (let at = 0; at < whole.length; at++) {
      const changed = whole.slice();
      changed[at] = 255;
      expect(() => readWave(changed)).not.toThrow();
    }
  });
});
