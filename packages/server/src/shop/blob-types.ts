/** Types of pictures and sound that are kept, with the most bytes of one. Nothing of them can run in a browser. */
const LIMITS: Readonly<Record<string, number>> = {
  "image/jpeg": 8_000_000,
  "image/png": 8_000_000,
  "image/webp": 8_000_000,
  "audio/wav": 20_000_000,
  "audio/webm": 20_000_000,
  "audio/ogg": 20_000_000,
  "audio/mp4": 20_000_000,
};

/** A type without its parameters, and the most bytes of one; null for a type that is not kept. */
export function blobType(given: string): { readonly type: string; readonly limit: number } | null {
  const type = given.split(";")[0]!.trim().toLowerCase();
  const limit = Object.hasOwn(LIMITS, type) ? LIMITS[type] : undefined;
  return limit === undefined ? null : { type, limit };
}
