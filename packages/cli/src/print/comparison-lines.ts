import {
  CIRCUITS,
  type Circuit,
  type Comparison,
  openingName,
  SPOKEN_OPENINGS,
  warningText,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { table } from "./layout.ts";
import { percentOf } from "./mixture-words.ts";
import { points } from "./points.ts";

const NAMES: Readonly<Record<Circuit, string>> = {
  pilot: "pilot jet",
  screw: "screw",
  slide: "slide",
  needle: "needle, clip",
  main: "main jet",
  air: "air and fuel",
};

/** "+3.1", "-0.4" or "0": never a sign before nothing. */
export function signed(percent: number, digits = 1): string {
  const rounded = Number(percent.toFixed(digits)) + 0;
  return rounded === 0 ? "0" : `${rounded > 0 ? "+" : ""}${rounded.toFixed(digits)}`;
}

/** By which opening one setup is richer or leaner than another, and which part does it. */
export function comparisonLines({ at, firmness, notes }: Comparison, width: number): string[] {
  const shown = at.filter(({ opening }) => SPOKEN_OPENINGS.includes(opening));
  const changed = CIRCUITS.filter((circuit) =>
    at.some(({ byCircuit }) => Math.abs(byCircuit[circuit]) > 5e-4),
  );
  const rows = [
    ["", ...shown.map(({ opening }) => openingName(opening))],
    ["Richer by, %", ...shown.map(({ logRatio }) => signed(percentOf(logRatio)))],
    ["give or take", ...shown.map(({ sd }) => (100 * sd).toFixed(1))],
    ...(changed.length > 1 ? changed : []).map((circuit) => [
      `  ${NAMES[circuit]}`,
      ...shown.map(({ byCircuit }) => signed(100 * byCircuit[circuit])),
    ]),
  ];
  return [
    ...table(rows, 4),
    "",
    ...points(
      "How firm",
      changed.map((circuit) => `${NAMES[circuit]}, ${firmness[circuit].word}: ${firmness[circuit].text}`),
      width,
    ),
    ...points(
      "Mind",
      notes.map((note) => warningText(note, english)),
      width,
    ),
  ];
}

/** What a comparison comes to, in one sentence. */
export function comparisonSentence({ at }: Comparison, subject: string): string {
  const shown = at.filter(({ opening }) => SPOKEN_OPENINGS.includes(opening));
  const most = shown.reduce((a, b) => (Math.abs(b.logRatio) > Math.abs(a.logRatio) ? b : a));
  const least = shown.reduce((a, b) => (b.logRatio < a.logRatio ? b : a));
  const richest = shown.reduce((a, b) => (b.logRatio > a.logRatio ? b : a));
  const size = ({ logRatio }: typeof most): string =>
    `${Math.max(1, Math.round(Math.abs(percentOf(logRatio))))} %`;
  const at1 = ({ opening }: typeof most): string =>
    openingName(opening) === "closed" ? "with the throttle closed" : `at ${openingName(opening)}`;
  if (Math.abs(percentOf(most.logRatio)) < 0.5) return `${subject} runs the same.`;
  if (least.logRatio < -0.005 && richest.logRatio > 0.005) {
    return `${subject} runs richer by up to ${size(richest)} ${at1(richest)}, and leaner by up to ${size(least)} ${at1(least)}.`;
  }
  return `${subject} runs ${most.logRatio > 0 ? "richer" : "leaner"}, most ${at1(most)}: by ${size(most)}.`;
}
