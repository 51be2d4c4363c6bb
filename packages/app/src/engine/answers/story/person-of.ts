import type { Entry } from "@jetwright/records";

/** Who wrote a record; null when it does not say. */
export function personOf({ source }: Entry): string | null {
  const { by } = source;
  if (typeof by !== "object" || by === null || Array.isArray(by)) return null;
  const { person } = by as { readonly person?: unknown };
  return typeof person === "string" && person !== "" ? person : null;
}
