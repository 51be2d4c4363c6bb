import { isIPv4 } from "node:net";

/** An address as certificates hold it: 4 bytes, or 16 for IPv6. The address is well formed and names no zone. */
export function addressBytes(address: string): Uint8Array<ArrayBuffer> {
  if (isIPv4(address)) return Uint8Array.from(address.split("."), Number);
  const [before = "", after] = address.split("::");
  const head = words(before);
  const tail = after === undefined ? [] : words(after);
  const between = new Array<number>(after === undefined ? 0 : 8 - head.length - tail.length).fill(0);
  return Uint8Array.from([...head, ...between, ...tail].flatMap((word) => [word >> 8, word & 255]));
}

/** Sixteen-bit words; the last two may be written as an IPv4 address (RFC 4291, 2.2). */
const words = (text: string): number[] =>
  text === ""
    ? []
    : text.split(":").flatMap((word) => {
        if (!isIPv4(word)) return [Number.parseInt(word, 16)];
        const [a = 0, b = 0, c = 0, d = 0] = addressBytes(word);
        return [(a << 8) | b, (c << 8) | d];
      });

/** The mask of a network, of as many bytes as its address. */
export const maskBytes = (bits: number, bytes: number): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(
    { length: bytes },
    (_, at) => (0xff << (8 - Math.min(8, Math.max(0, bits - 8 * at)))) & 0xff,
  );
