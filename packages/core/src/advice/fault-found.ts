import { FAULTS, type FaultId } from "../belief/catalogue.ts";
import type { CheckResult } from "./case.ts";
import { checkById } from "./checks.ts";

/**
 * The fault that a check found or mended; where nobody said which, the one the check is made for. Null: none was
 * named by a check that came out sound, or the check is not in the catalogue.
 */
export function faultFound({ check, found, fault }: CheckResult): FaultId | null {
  const named = FAULTS.find((each) => each === fault);
  if (named !== undefined) return named;
  const first = Object.keys(checkById(check)?.finds ?? {})[0];
  return found === "sound" ? null : (FAULTS.find((each) => each === first) ?? null);
}
