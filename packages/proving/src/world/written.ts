import type { PartName } from "../truth/bike.ts";

/** A part's record: what somebody wrote down, which may be wrong, or null where nobody knows. */
export type Written = { readonly [name in PartName]: number | null };
