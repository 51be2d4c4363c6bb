import type { JsonObject } from "@jetwright/records";

/** What the carburetor is, seen with a part in the hand. */
export interface Seen extends JsonObject {
  readonly screw?: "air" | "fuel";
  readonly jetNumbering?: "bore" | "flow";
}

/** What was seen, to be written down with the part; nothing where nothing was. */
export const seenDrafts = (seen: Seen) =>
  Object.keys(seen).length === 0 ? [] : [{ kind: "bike-described", body: { carburetor: seen } } as const];
