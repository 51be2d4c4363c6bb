/** Ids of records, and how they sort. */

const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/;

/**
 * A UUID of version 7 as text: 48 bits of milliseconds, then 74 random bits, so ids sort by when they were made.
 * Source: RFC 9562 section 5.7.
 * @param milliseconds since 1970, whole, 0 to 2^48 - 1
 * @param random ten bytes from a good source of randomness
 */
export function makeRecordId(milliseconds: number, random: Uint8Array): string {
  if (!Number.isInteger(milliseconds) || milliseconds < 0 || milliseconds >= 0x1_0000_0000_0000) {
    throw new RangeError(`Milliseconds must be whole and from 0 to 2^48 - 1, got ${milliseconds}`);
  }
  if (random.length !== 10) throw new RangeError(`Ten random bytes are needed, got ${random.length}`);
  const hex = [...random].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  const time = milliseconds.toString(16).padStart(12, "0");
  const variant = (0x8 | (random[2]! >> 6)).toString(16);
  return `${time.slice(0, 8)}-${time.slice(8)}-7${hex.slice(0, 3)}-${variant}${hex.slice(5, 8)}-${hex.slice(8)}`;
}

const runs = (id: string): string[] => id.match(/\d+|\D+/g) ?? [];

/**
 * Order of ids, for records that happened at the same instant. UUIDs sort as text, which for version 7 is by
 * when they were made; ids typed by hand come before them and sort with numbers as numbers ("r9" before "r10").
 */
export function compareIds(a: string, b: string): number {
  if (a === b) return 0;
  const [uuidA, uuidB] = [UUID.test(a), UUID.test(b)];
  if (uuidA !== uuidB) return uuidA ? 1 : -1;
  if (uuidA) return a < b ? -1 : 1;
  const [runsA, runsB] = [runs(a), runs(b)];
  for (let i = 0; i < Math.min(runsA.length, runsB.length); i++) {
    const [x, y] = [runsA[i]!, runsB[i]!];
    const difference = Number(x) - Number(y);
    if (difference > 0 || difference < 0) return difference;
    if (Number.isNaN(difference) && x !== y) return x < y ? -1 : 1;
  }
  return runsA.length - runsB.length || (a < b ? -1 : 1);
}
