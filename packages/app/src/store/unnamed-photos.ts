/** When each picture was first seen without a name, milliseconds since 1970, by its hash. */
export type Unnamed = Readonly<Record<string, number>>;

/** A picture that nothing names any more stays this long, so that its removal can be taken back. */
const KEPT_MS = 24 * 3_600_000;

/**
 * Which pictures of this device may be deleted now, and which nothing names but may still be wanted back.
 * @param named whether a record that counts, or work half done, names the picture
 * @param since what this gave as `waiting` the last time
 */
export function unnamedPhotos(
  hashes: readonly string[],
  named: (hash: string) => boolean,
  since: Unnamed,
  now: number,
): { readonly due: readonly string[]; readonly waiting: Unnamed } {
  const unnamed = hashes.filter((hash) => !named(hash));
  // A clock set back does not make a picture wait for longer than it would from now.
  const from = (hash: string): number => Math.min(since[hash] ?? now, now);
  const due = unnamed.filter((hash) => now - from(hash) >= KEPT_MS);
  const waiting = unnamed.filter((hash) => !due.includes(hash)).map((hash) => [hash, from(hash)]);
  return { due, waiting: Object.fromEntries(waiting) };
}
