import { deflateSync } from "node:zlib";

const COLOURS = 64;
const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

const CRC_TABLE = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = CRC_TABLE[(crc ^ byte) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}

function chunk(type: string, data: Uint8Array): Buffer {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc32(body), body.length + 4);
  return framed;
}

/** How far a colour is from grey, 0 to 255. */
function chroma(colour: number): number {
  const parts = [colour >> 16, (colour >> 8) & 0xff, colour & 0xff];
  return Math.max(...parts) - Math.min(...parts);
}

/** The colours met most often, a strong one counted more than a grey; each at least 12 away (summed over its three parts) from every one chosen before it. */
function paletteOf(rgba: Uint8Array, most: number): number[] {
  const met = new Map<number, number>();
  for (let i = 0; i < rgba.length; i += 4) {
    const colour = (rgba[i]! << 16) | (rgba[i + 1]! << 8) | rgba[i + 2]!;
    met.set(colour, (met.get(colour) ?? 0) + 1);
  }
  const chosen: number[] = [];
  const weight = ([colour, count]: [number, number]): number => count * (1 + chroma(colour) / 4);
  for (const [colour] of [...met].sort((a, b) => weight(b) - weight(a))) {
    if (chosen.length === most) break;
    if (chosen.every((other) => apart(colour, other) >= 12)) chosen.push(colour);
  }
  return chosen;
}

const apart = (a: number, b: number): number =>
  Math.abs((a >> 16) - (b >> 16)) +
  Math.abs(((a >> 8) & 0xff) - ((b >> 8) & 0xff)) +
  Math.abs((a & 0xff) - (b & 0xff));

function nearest(colour: number, palette: readonly number[]): number {
  let best = 0;
  for (let i = 1; i < palette.length; i++) {
    if (apart(colour, palette[i]!) < apart(colour, palette[best]!)) best = i;
  }
  return best;
}

/**
 * A PNG of 64 colours, the ones the picture uses most; every pixel takes the nearest. For flat drawings and text.
 * `rgba` holds width × height × 4 bytes; transparency is left out. Source: PNG specification, third edition (W3C 2025), clauses 5
 * and 11, from memory.
 */
export function palettePng(rgba: Uint8Array, width: number, height: number): Buffer {
  if (rgba.length !== width * height * 4) {
    throw new RangeError(`${rgba.length} bytes for ${width} × ${height}: needs ${width * height * 4}`);
  }
  const palette = paletteOf(rgba, COLOURS);
  const known = new Map<number, number>();
  const lineBytes = 1 + width;
  const lines = Buffer.alloc(lineBytes * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const from = (y * width + x) * 4;
      const colour = (rgba[from]! << 16) | (rgba[from + 1]! << 8) | rgba[from + 2]!;
      let index = known.get(colour);
      if (index === undefined) {
        index = nearest(colour, palette);
        known.set(colour, index);
      }
      lines[y * lineBytes + 1 + x] = index;
    }
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 3, 0, 0, 0], 8);
  const colours = Buffer.from(palette.flatMap((c) => [c >> 16, (c >> 8) & 0xff, c & 0xff]));
  return Buffer.concat([
    SIGNATURE,
    chunk("IHDR", header),
    chunk("PLTE", colours),
    chunk("IDAT", deflateSync(lines, { level: 9 })),
    chunk("IEND", new Uint8Array()),
  ]);
}
