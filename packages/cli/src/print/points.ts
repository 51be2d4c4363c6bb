import { type Warning, warningText } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { hanging } from "./layout.ts";
import { oneLine } from "./printable.ts";

/** A heading with its points, and an empty line after it; nothing where there is no point. */
export function points(heading: string, texts: readonly string[], width: number): string[] {
  if (texts.length === 0) return [];
  return [heading, ...texts.flatMap((text) => hanging("  - ", text, width)), ""];
}

/** Warnings for people, each once, without those that matter to programs only. */
export const worthSaying = (warnings: readonly Warning[]): string[] => [
  ...new Set(
    warnings
      .filter(({ code }) => code !== "outside-formula-range")
      .map((warning) => oneLine(warningText(warning, english))),
  ),
];
