import type { BodyOf } from "../kinds/all.ts";

/** What is known of a bike: all its descriptions, later fields over earlier ones. */
export type Description = BodyOf<"bike-described">;

/** A later description laid over an earlier one, field by field; a bore is replaced whole. */
export function describe(before: Description | null, later: Description): Description {
  if (before === null) return later;
  return {
    ...before,
    ...later,
    ...(later.engine && { engine: { ...before.engine, ...later.engine } }),
    ...(later.carburetor && { carburetor: { ...before.carburetor, ...later.carburetor } }),
    ...(later.place && { place: { ...before.place, ...later.place } }),
  };
}
