import type { ReferenceCheck } from "./check.ts";
import { FUEL_CHECKS } from "./fuel.ts";

/** Every outside check, by topic. A new topic file is added here and nowhere else. */
export const REFERENCES: readonly { readonly topic: string; readonly checks: readonly ReferenceCheck[] }[] = [
  { topic: "fuel", checks: FUEL_CHECKS },
];
