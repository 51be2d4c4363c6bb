import { SCREW_RULE } from "../parts/screw.ts";
import { toCelsius, toCubicCentimetre, toHectopascal, toMillimetre } from "../units/convert.ts";
import type { CoreWords } from "../words/core-words.ts";
import { warningText } from "../words/warning.ts";
import type { StartingFigure } from "./starting-figure.ts";
import type { StartingPoint } from "./starting-point.ts";

const NAMES: Readonly<Record<StartingFigure["part"], string>> = {
  main: "Main jet",
  pilot: "Pilot jet",
  clip: "Clip",
  screw: "Screw",
  cutaway: "Cutaway",
};

/** What to say about the first ride of a bike on a starting point. */
export function firstRideCautions(point: Pick<StartingPoint, "bike">): readonly string[] {
  return [
    point.bike.strokes === 2
      ? "It is rich at the top on purpose: expect smoke and some four-stroking at full throttle."
      : "It is rich at the top on purpose: expect it to be dull at full throttle.",
    "Warm it up fully. At 3/4 throttle or more a few seconds only, until the roll-off test has been done.",
    "Pinging, power that fades at full throttle, sudden heat: close the throttle, clutch in, stop. Fit a bigger main jet before it runs again.",
    "An idle that hangs after closing the throttle is lean, first of all in the pilot circuit, or an air leak: ride no further before you know which.",
  ];
}

/** What to do after fitting a starting point, in order. */
export function afterStartingPoint(point: Pick<StartingPoint, "bike">): readonly string[] {
  return [
    "Before any jet, the mechanics: air leaks at boot, reeds and seals; float level; fuel flow; clean filter; a new plug; choke that seats; slide that snaps shut.",
    screwSweep(point.bike.screwKind),
    "Roll-off: warm, high gear, full throttle for 3 to 5 s, then ease to 7/8. If it picks up it is lean: go a size up. If it only eases, go down one size at a time, and stop at the first that runs clean.",
    "Then the middle: clip one groove at a time, judged at 1/4 to 3/4. Change one part, ride, write it down.",
  ];
}

function screwSweep(kind: "air" | "fuel" | null): string {
  const sweep = "Screw: warm, idling, find the turns with the fastest even idle, then quarter turns by feel.";
  if (kind === null) {
    return `${sweep} Settle first which screw it is. ${SCREW_RULE.air} ${SCREW_RULE.fuel}`;
  }
  const [few, many] = kind === "air" ? ["bigger", "smaller"] : ["smaller", "bigger"];
  return `${sweep} Best below 3/4 turn out: a ${few} pilot jet; above 2 1/2: a ${many} one. ${SCREW_RULE[kind]}`;
}

/** A starting point as a block of text to send to whoever asked for it. */
export function startingPointText(point: StartingPoint, words: CoreWords): string {
  const { bike, place, figures } = point;
  const engine = [
    bike.displacement === null ? null : `${Math.round(toCubicCentimetre(bike.displacement))} cm³`,
    bike.strokes === 2 ? "two-stroke" : "four-stroke",
    bike.use,
    `${rounded(toMillimetre(point.bore))} mm carburetor${bike.bore === null ? " (guessed)" : ""}`,
  ].filter((word) => word !== null);
  const air = `${Math.round(toCelsius(place.air.temperature))} °C, ${Math.round(toHectopascal(place.air.pressure))} hPa at the place`;
  const rests = new Map<string, string[]>();
  for (const figure of figures) {
    const basis = figure.restsOn.join("; ");
    rests.set(basis, [...(rests.get(basis) ?? []), nameOf(figure).toLowerCase()]);
  }
  return [
    `Starting point: ${engine.join(", ")}`,
    `For air of ${air}.`,
    "",
    ...figures.map((figure) =>
      `  ${nameOf(figure).padEnd(26)}${startOf(figure).padEnd(28)}${spreadOf(figure)}`.trimEnd(),
    ),
    `  Needle: ${point.needle}`,
    "",
    "This is a starting point, not a setting. Nine of ten such bikes end up in the ranges on the right.",
    ...section(
      "To know first",
      point.warnings.map((warning) => warningText(warning, words)),
    ),
    ...section(
      "What it rests on",
      [...rests].map(([basis, names]) => `${capital(names.join(", "))}: ${basis}.`),
    ),
    ...section("Not used", point.leftOut),
    ...section("First ride", firstRideCautions(point)),
    ...section("Then", afterStartingPoint(point), "numbered"),
    "",
  ].join("\n");
}

const rounded = (x: number): number => Math.round(x * 10) / 10;
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function nameOf({ part, numbering }: StartingFigure): string {
  const name = NAMES[part];
  return numbering === null ? name : `${name} (${numbering} number)`;
}

function startOf({ part, start }: StartingFigure): string {
  if (part === "clip") return `groove ${start} of 5 from the top`;
  if (part === "screw") return `${rounded2(start)} turns out`;
  if (part === "cutaway") return `${start} mm if it must be bought`;
  return `${start}`;
}

function spreadOf({ part, low, high }: StartingFigure): string {
  const range = low === high ? `${rounded2(low)}` : `${rounded2(low)} to ${rounded2(high)}`;
  return part === "cutaway" ? `${range} mm` : range;
}

const rounded2 = (x: number): number => Math.round(x * 100) / 100;

const section = (title: string, lines: readonly string[], style: "plain" | "numbered" = "plain"): string[] =>
  lines.length === 0
    ? []
    : ["", title, ...lines.map((line, i) => `  ${style === "numbered" ? `${i + 1}.` : "-"} ${line}`)];
