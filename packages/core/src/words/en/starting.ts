import type { RestsOn, TheoryBasis } from "../rests-on.ts";

const SCREW_RULE = {
  air: "An air screw sits on the filter side of the slide: out is leaner, in is richer.",
  fuel: "A fuel screw sits on the engine side of the slide: out is richer, in is leaner.",
};
const COUNTS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

function theory(basis: TheoryBasis): string {
  switch (basis.of) {
    case "clip":
      return "common practice: most bikes end up on groove 2 or 3 of 5";
    case "screw":
      return "common practice: 1 to 2 turns, published settings from 1/2 to 2 1/4";
    case "cutaway":
      return "the usual slide for the bore";
    default: {
      const { of, lowPercent, highPercent, flow } = basis;
      const what = `a ${of} jet of ${lowPercent.toFixed(1)} to ${highPercent.toFixed(1)} % of the carburetor's bore`;
      const roughly = flow ? ", where a flow number tells the bore only roughly" : "";
      return `theory and published settings: ${what}${roughly}`;
    }
  }
}

/** A starting point in words. Its own door of the package, since it is asked for seldom. */
export const starting = {
  /** What a figure rests on, what weighed most first. */
  restsOn: ({ theory: basis, shop }: RestsOn): readonly string[] => {
    if (shop === null) return [theory(basis)];
    const { bikes, lowCc, highCc, most } = shop;
    const span = lowCc === highCc ? `of ${lowCc} cm³` : `set up between ${lowCc} and ${highCc} cm³`;
    const words = `${COUNTS[bikes] ?? bikes} ${bikes === 1 ? "bike" : "bikes"} of this shop ${span}, brought to standard air`;
    return most
      ? [`mostly ${words}`, `the rest ${theory(basis)}`]
      : [`mostly ${theory(basis)}`, `partly ${words}`];
  },
  /** @param alike marks of the needles that bikes nearly alike in the shop run */
  needle: (alike: readonly string[]): string => {
    const keep =
      "Keep the needle and needle jet that are in it; write down their marks, and measure a worn one.";
    return alike.length === 0
      ? keep
      : `${keep} Bikes nearly alike in this shop run ${alike.length === 1 ? "needle" : "needles"} ${alike.join(", ")}.`;
  },
  firstRide: (strokes: 2 | 4): readonly string[] => [
    strokes === 2
      ? "It is rich at the top on purpose: expect smoke and some four-stroking at full throttle."
      : "It is rich at the top on purpose: expect it to be dull at full throttle.",
    "Warm it up fully. At 3/4 throttle or more a few seconds only, until the roll-off test has been done.",
    "Pinging, power that fades at full throttle, sudden heat: close the throttle, clutch in, stop. Fit a bigger main jet before it runs again.",
    "An idle that hangs after closing the throttle is lean, first of all in the pilot circuit, or an air leak: ride no further before you know which.",
  ],
  /** What to do after fitting it, in order; the screw is null where nobody knows its side. */
  afterwards: (screw: "air" | "fuel" | null): readonly string[] => {
    const sweep =
      "Screw: warm, idling, find the turns with the fastest even idle, then quarter turns by feel.";
    const [few, many] = screw === "air" ? ["bigger", "smaller"] : ["smaller", "bigger"];
    return [
      "Before any jet, the mechanics: air leaks at boot, reeds and seals; float level; fuel flow; clean filter; a new plug; choke that seats; slide that snaps shut.",
      screw === null
        ? `${sweep} Settle first which screw it is. ${SCREW_RULE.air} ${SCREW_RULE.fuel}`
        : `${sweep} Best below 3/4 turn out: a ${few} pilot jet; above 2 1/2: a ${many} one. ${SCREW_RULE[screw]}`,
      "Roll-off: warm, high gear, full throttle for 3 to 5 s, then ease to 7/8. If it picks up it is lean: go a size up. If it only eases, go down one size at a time, and stop at the first that runs clean.",
      "Then the middle: clip one groove at a time, judged at 1/4 to 3/4. Change one part, ride, write it down.",
    ];
  },
  /** The block of text to send. */
  text: {
    heading: (engine: string): string => `Starting point: ${engine}`,
    strokes: (strokes: 2 | 4): string => (strokes === 2 ? "two-stroke" : "four-stroke"),
    uses: { trail: "trail", enduro: "enduro", race: "race" },
    bore: (mm: string, guessed: boolean): string => `${mm} mm carburetor${guessed ? " (guessed)" : ""}`,
    air: (celsius: number, hPa: number): string => `For air of ${celsius} °C, ${hPa} hPa at the place.`,
    part: { main: "Main jet", pilot: "Pilot jet", clip: "Clip", screw: "Screw", cutaway: "Cutaway" },
    numbered: (part: string, numbering: "bore" | "flow"): string => `${part} (${numbering} number)`,
    clip: (groove: string): string => `groove ${groove} of 5 from the top`,
    turns: (turns: string): string => `${turns} turns out`,
    cutaway: (mm: string): string => `${mm} mm if it must be bought`,
    range: (low: string, high: string): string => `${low} to ${high}`,
    needle: (words: string): string => `Needle: ${words}`,
    noSetting:
      "This is a starting point, not a setting. Nine of ten such bikes end up in the ranges on the right.",
    know: "To know first",
    rests: "What it rests on",
    notUsed: "Not used",
    firstRide: "First ride",
    next: "Then",
  },
};

export type StartingWords = typeof starting;
