import { canonicalJson, digest } from "./canonical-json.ts";
import type { Entry } from "./entry.ts";

/** 53 bits of what a record says, the same however its keys were ordered. */
export const digestOf = (entry: Entry): number => digest(canonicalJson(entry.source));
