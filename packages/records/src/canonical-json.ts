import type { Json } from "./json.ts";

/** Deepest nesting of lists and objects that a record may have. */
export const DEPTH_LIMIT = 32;

/**
 * JSON with the keys of every object in code-unit order and no spaces: two records that say the same are the
 * same text. Fields left undefined are left out. Throws RangeError for what JSON cannot say (NaN, Infinity) or nesting beyond DEPTH_LIMIT.
 */
export function canonicalJson(value: Json, depth = 0): string {
  if (depth > DEPTH_LIMIT) throw new RangeError(`Nested deeper than ${DEPTH_LIMIT}`);
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new RangeError(`JSON has no number ${value}`);
    return JSON.stringify(value);
  }
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  if (Array.isArray(value)) {
    return `[${value.map((one: Json) => canonicalJson(one, depth + 1)).join(",")}]`;
  }
  const object = value as { readonly [key: string]: Json };
  const fields = Object.keys(object)
    .filter((key) => object[key] !== undefined)
    .sort()
    .map((key) => `${JSON.stringify(key)}:${canonicalJson(object[key]!, depth + 1)}`);
  return `{${fields.join(",")}}`;
}

/**
 * 53 bits that two texts share only if they are the same text, as far as chance allows (1 in 9e15 a pair).
 * Two FNV-1a style streams with different primes; not for secrets.
 */
export function digest(text: string): number {
  let a = 0x811c9dc5;
  let b = 0x9e3779b9;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code, 0x85ebca6b);
    b ^= b >>> 13;
  }
  a ^= b >>> 16;
  a = Math.imul(a, 0xc2b2ae35);
  return (b >>> 0) * 0x20_0000 + ((a ^ (a >>> 15)) >>> 11);
}
