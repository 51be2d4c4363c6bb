import type { Timed } from "../measure/run-all.ts";

export function writeReport(
  _policies: readonly string[],
  _all: readonly Timed[],
  _seconds: number,
): readonly (readonly [string, string])[] {
  return [];
}
