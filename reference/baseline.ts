import {
  type BikeToStart,
  boreFor,
  type CubicMetre,
  type Metre,
  STANDARD_AIR,
  type StartingFigure,
  standardFuel,
  startingPoint,
  usualBore,
} from "@jetwright/core";
import type { ReferenceCheck } from "./check.ts";

const cc = (x: number): CubicMetre => (x / 1e6) as CubicMetre;
const mm = (x: number): Metre => (x / 1000) as Metre;

interface Published {
  readonly name: string;
  readonly source: string;
  readonly standing: ReferenceCheck["standing"];
  readonly bike: Pick<BikeToStart, "strokes" | "use"> & { readonly volume: number; readonly bore: number };
}

const ROTAX = "Rotax jetting list for Bing 36 mm carburetors, raanz.org.nz/techproject/rotax.html";
/** One carburetor each. The larger engine has two cylinders on it. */
const R277: Published = {
  name: "277 cm³ two-stroke, 36 mm, calm use",
  source: `${ROTAX}, type 277`,
  standing: "read",
  bike: { strokes: 2, use: "trail", volume: 277, bore: 36 },
};
const R447: Published = {
  name: "447 cm³ two-stroke, 36 mm, calm use",
  source: `${ROTAX}, type 447, one carburetor`,
  standing: "read",
  bike: { strokes: 2, use: "trail", volume: 447, bore: 36 },
};
const GUZZI: Published = {
  name: "27 mm four-stroke, one carburetor for each cylinder",
  source:
    "Superalce manual, ch. 6 carburettor (github w5l/w5l.github.io superalce/06-03-Carburettor.md); 500 cm³ single from memory",
  standing: "read",
  bike: { strokes: 4, use: "trail", volume: 500, bore: 27 },
};
const MOTOCROSS: Published = {
  name: "249 cm³ motocross two-stroke, 38 mm",
  source: "Yamaha YZ250 owner's service manual, about 2006: main 178, pilot 50",
  standing: "memory",
  bike: { strokes: 2, use: "race", volume: 249, bore: 38 },
};
const ENDURO: Published = {
  name: "249 cm³ enduro two-stroke, 36 mm",
  source: "KTM 250 EXC owner's manual, about 2006: main 165, pilot 38 to 42",
  standing: "memory",
  bike: { strokes: 2, use: "enduro", volume: 249, bore: 36 },
};
const KDX: Published = {
  name: "198 cm³ enduro two-stroke, 35 mm",
  source: "Kawasaki KDX200 service manual, 1995 on: main 160, pilot 42",
  standing: "memory",
  bike: { strokes: 2, use: "enduro", volume: 198, bore: 35 },
};

function figureOf({ bike }: Published, part: StartingFigure["part"]): StartingFigure {
  const point = startingPoint(
    {
      strokes: bike.strokes,
      use: bike.use,
      displacement: cc(bike.volume),
      bore: mm(bike.bore),
      screwKind: bike.strokes === 2 ? "air" : "fuel",
      mainNumbering: "bore",
      pilotNumbering: "bore",
    },
    [],
    { air: STANDARD_AIR, fuel: standardFuel(bike.strokes) },
  );
  if (!point.ok) throw new RangeError(`${point.reason}: ${point.detail}`);
  return point.value.figures.find((figure) => figure.part === part)!;
}

/** A published jet against the best guess before rounding, in spreads: 1 is the end of "nine of ten". */
function inSpreads(published: Published, part: "main" | "pilot", number: number): number {
  const { middle, low, high } = figureOf(published, part);
  return Math.log(number / middle) / (Math.log(high / low) / 2);
}

const jet = (
  published: Published,
  part: "main" | "pilot",
  number: number,
  within: number,
  because: string,
): ReferenceCheck => ({
  name: `${published.name}: ${part} ${number}, in half-widths of the stated spread`,
  source: published.source,
  standing: published.standing,
  unit: "half-widths",
  want: 0,
  within,
  because,
  got: () => inSpreads(published, part, number),
});

const IN_RANGE = "a published setting should lie inside the spread we state";
const SILENCED =
  "the list shows that an intake silencer takes 5.5 % off the number, half a half-width, which theory does not know of";

/** Where the cold start of a bike without history lies against settings that makers published. */
export const BASELINE_CHECKS: readonly ReferenceCheck[] = [
  jet(R277, "main", 148, 1, IN_RANGE),
  jet(R277, "main", 140, 1.5, SILENCED),
  jet(R447, "main", 165, 1, IN_RANGE),
  jet(R447, "main", 155, 1, IN_RANGE),
  jet(R277, "pilot", 45, 1, IN_RANGE),
  jet(GUZZI, "main", 115, 1, IN_RANGE),
  jet(GUZZI, "main", 118, 1, IN_RANGE),
  jet(GUZZI, "pilot", 50, 1, IN_RANGE),
  jet(MOTOCROSS, "main", 178, 1, IN_RANGE),
  jet(MOTOCROSS, "pilot", 50, 1, IN_RANGE),
  jet(ENDURO, "main", 165, 1, IN_RANGE),
  jet(ENDURO, "pilot", 40, 1.2, "the middle of the range the manual gives; leaner than most"),
  jet(KDX, "main", 160, 1, IN_RANGE),
  jet(KDX, "pilot", 42, 1, IN_RANGE),
  {
    name: "settings start on the rich side: the 249 cm³ enduro's start over the published main, at least",
    source: ENDURO.source,
    standing: ENDURO.standing,
    unit: "ratio",
    want: 1.09,
    within: 0.08,
    because:
      "never leaner than what the maker fits, and not more than 17 % above it, or it would not run clean enough to learn from",
    got: () => figureOf(ENDURO, "main").start / 165,
  },
  ...[0.5, 1, 1.5, 2.25].map(
    (turns): ReferenceCheck => ({
      name: `air screw published at ${turns} turns, against the stated range`,
      source:
        turns <= 1
          ? ROTAX
          : turns === 1.5
            ? "Yamaha GT1 manual"
            : "Yamaha YZ125 2010 owner's service manual, p. 4-11",
      standing: "read",
      unit: "turns outside",
      want: 0,
      within: turns === 0.5 ? 0.25 : 0,
      because:
        turns === 0.5
          ? "one in ten is outside what is stated; a quarter turn is the smallest step anyone sets"
          : "the stated range should hold it",
      got: () => {
        const { low, high } = figureOf(ENDURO, "screw");
        return Math.max(0, low - turns, turns - high);
      },
    }),
  ),
  {
    name: "D = K √(V N), K 0.65, 0.25 l at 8000/min",
    source: "G. Jennings, Two-Stroke Tuner's Handbook, 1973, carburetor size",
    standing: "memory",
    unit: "mm",
    want: 29,
    within: 0.5,
    because: "the printed figure is whole millimetres",
    got: () => 1000 * boreFor(0.65, cc(250), 8000),
  },
  {
    name: "D = K √(V N), K 0.90, 0.25 l at 8000/min",
    source: "G. Jennings, Two-Stroke Tuner's Handbook, 1973, carburetor size",
    standing: "memory",
    unit: "mm",
    want: 40,
    within: 0.5,
    because: "the printed figure is whole millimetres",
    got: () => 1000 * boreFor(0.9, cc(250), 8000),
  },
  {
    name: "bore of a 250 cm³ enduro, about 30 hp from one cylinder",
    source: "Dell'Orto guide, sec. 3.1.1, graph: 30 hp for each cylinder takes 32 to 38 mm",
    standing: "read",
    unit: "mm",
    want: 35,
    within: 3,
    because: "the graph gives a band from 32 to 38",
    got: () => 1000 * usualBore(cc(250), "enduro"),
  },
  ...(
    [
      [50, "race", 19],
      [65, "race", 24],
      [85, "race", 28],
      [125, "race", 36],
      [250, "race", 38],
      [300, "enduro", 36],
    ] as const
  ).map(
    ([volume, use, bore]): ReferenceCheck => ({
      name: `usual bore of a ${volume} cm³ two-stroke, ${use}`,
      source: "common practice, no source: bores that such bikes are sold with",
      standing: "common practice",
      unit: "mm",
      want: bore,
      within: 0.3,
      relative: true,
      because:
        "twice the 15 % that the rule is good to; makers choose by taste, and a child's 50 is held small",
      got: () => 1000 * usualBore(cc(volume), use),
    }),
  ),
];
