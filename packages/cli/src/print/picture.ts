import { type MixtureReading, openingName } from "@jetwright/core";
import { percentOf } from "./mixture-words.ts";

interface Brush {
  readonly band: string;
  readonly now: string;
  readonly after: string;
  readonly both: string;
  readonly zero: string;
  readonly wall: string;
}

const BRUSHES: Readonly<Record<"unicode" | "ascii", Brush>> = {
  unicode: { band: "░", now: "●", after: "○", both: "●", zero: "─", wall: "│" },
  ascii: { band: ":", now: "#", after: "o", both: "#", zero: "-", wall: "|" },
};

/** Columns from one opening to the next, and rows from right to the edge. */
const STEP = 11;
const HALF_ROWS = 6;
/** Percent from right to the edge of the picture: the smallest of these that holds the mixture. */
const SCALES = [6, 12, 18, 24, 36, 48] as const;
const MARGIN = "  ";
/** Which part governs where. Common practice, no source. */
const GOVERNS = "pilot, screw    slide       needle and clip          main jet";

export interface PictureOptions {
  readonly unicode: boolean;
  /** Paints rich and lean, which are told by word and place already. */
  readonly paint: (text: string, side: "rich" | "lean") => string;
}

/**
 * The mixture against throttle opening: rich up, lean down, the band of doubt shaded (two chances in three),
 * and what the step should make of it beside what is now.
 */
export function mixturePicture(
  now: readonly MixtureReading[],
  after: readonly MixtureReading[] | null,
  { unicode, paint }: PictureOptions,
): string[] {
  const brush = BRUSHES[unicode ? "unicode" : "ascii"];
  const shown = [...now, ...(after ?? [])].map(({ mean }) => Math.abs(percentOf(mean)) * 1.15);
  const doubt = now.map(({ mean, sd }) => Math.abs(percentOf(mean)) + 105 * sd);
  const wanted = Math.max(...shown, ...doubt);
  const scale = SCALES.find((one) => one >= wanted) ?? SCALES.at(-1)!;
  const perRow = scale / HALF_ROWS;
  const width = STEP * (now.length - 1) + 1;
  const rowOf = (percent: number): number =>
    Math.max(-HALF_ROWS, Math.min(HALF_ROWS, Math.round(percent / perRow)));
  const grid = new Map<string, string>();
  const put = (row: number, column: number, letter: string): void => {
    if (Math.abs(row) <= HALF_ROWS) grid.set(`${row} ${column}`, letter);
  };
  for (let column = 0; column < width; column++) {
    put(0, column, brush.zero);
    const { mean, sd } = between(now, column);
    const [low, high] = [rowOf(percentOf(mean - sd)), rowOf(percentOf(mean + sd))];
    for (let row = low; row <= high; row++) put(row, column, brush.band);
  }
  for (let column = 0; column < width; column++) {
    const row = rowOf(percentOf(between(now, column).mean));
    const then = after === null ? null : rowOf(percentOf(between(after, column).mean));
    if (then !== null && then !== row && column % 2 === 0) put(then, column, brush.after);
    put(row, column, brush.now);
  }
  const lines: string[] = [];
  for (let row = HALF_ROWS; row >= -HALF_ROWS; row--) {
    const cells = Array.from({ length: width }, (_, column) => grid.get(`${row} ${column}`) ?? " ");
    const drawn = cells.join("").trimEnd();
    lines.push(
      `${MARGIN}${margin(row, perRow)} ${brush.wall}${row === 0 ? drawn : paint(drawn, row > 0 ? "rich" : "lean")}`.trimEnd(),
    );
  }
  const indent = " ".repeat(MARGIN.length + 12);
  lines.push(`${indent}${axis(now)}`.trimEnd(), `${indent}${GOVERNS}`);
  const legend = [`${brush.now} now`, `${brush.band} where it may lie`];
  if (after !== null) legend.splice(1, 0, `${brush.after} after the step`);
  lines.push(`${indent}${legend.join("   ")}`);
  return lines;
}

/** "rich", the percent and "lean", in the margin. */
function margin(row: number, perRow: number): string {
  const words = row === HALF_ROWS ? "rich" : row === -HALF_ROWS ? "lean" : row === 0 ? "right" : "";
  const percent = row % 2 === 0 && row !== 0 ? `${row > 0 ? "+" : "-"}${Math.abs(row * perRow)} %` : "";
  return words.padEnd(5) + percent.padStart(6);
}

/** Straight from one opening to the next. */
function between(readings: readonly MixtureReading[], column: number): { mean: number; sd: number } {
  const left = readings[Math.floor(column / STEP)]!;
  const right = readings[Math.ceil(column / STEP)]!;
  const share = (column % STEP) / STEP;
  return {
    mean: left.mean + share * (right.mean - left.mean),
    sd: left.sd + share * (right.sd - left.sd),
  };
}

function axis(readings: readonly MixtureReading[]): string {
  let line = "";
  readings.forEach(({ opening }, i) => {
    const name = openingName(opening);
    const start = i === 0 ? 0 : i * STEP - Math.floor(name.length / 2);
    line = line.padEnd(start) + name;
  });
  return line;
}
