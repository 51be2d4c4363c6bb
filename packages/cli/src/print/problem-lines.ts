import type { Problem } from "@jetwright/records";
import { wrap } from "./layout.ts";
import { oneLine } from "./printable.ts";

/** Where a problem is: "line 12, body.main.number (k03)". */
export function placeOf({ line, path, record }: Problem): string {
  const place = [line === null ? "" : `line ${line}`, oneLine(path)].filter((part) => part !== "").join(", ");
  const id = record === null ? "" : `(${oneLine(record)})`;
  return [place, id].filter((part) => part !== "").join(" ") || "the log";
}

/** A problem in two lines: where and what, then how to mend it. */
export function problemText(problem: Problem, width: number): string[] {
  return [
    ...wrap(`${placeOf(problem)}: ${oneLine(problem.what)}`, width),
    ...wrap(oneLine(problem.mend), width - 4).map((line) => `    ${line}`),
  ];
}

const SHOWN = 10;

/** Problems for the error stream, after an answer was given from the rest. */
export function problemLines(problems: readonly Problem[], width: number): string {
  const count = problems.length;
  const head = `\n${count} ${count === 1 ? "thing" : "things"} in the input could not be used; the answer is from the rest:\n`;
  const shown = problems.slice(0, SHOWN).flatMap((problem) => problemText(problem, width));
  const more = count > SHOWN ? [`and ${count - SHOWN} more: jetwright check shows them all`] : [];
  return `${head}${[...shown, ...more].join("\n")}\n`;
}
