import {
  type AltitudeChart,
  accept,
  altitudeChart,
  type ChartCell,
  fromCelsius,
  fromFahrenheit,
  fromFoot,
  fromMetre,
  OPENINGS,
  type Outcome,
  planTrip,
  type Trip,
  toCelsius,
  turnsText,
} from "@jetwright/core";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { BIKE_FLAG } from "../input/bike-flag.ts";
import { type BikeOfLog, bikeOfLog } from "../input/bike-of-log.ts";
import { heightIn, listOf, readTrip, temperatureIn } from "../input/places.ts";
import type { Io } from "../io.ts";
import type { ChartOutput } from "../output/chart-output.ts";
import { airJson, openingJson, problemJson, setupJson, warningJson } from "../output/shapes.ts";
import { table, wrap } from "../print/layout.ts";
import { percentOf } from "../print/mixture-words.ts";
import { points, worthSaying } from "../print/points.ts";
import { oneLine } from "../print/printable.ts";
import { airWords, bikeTitle, fittedLine } from "../print/situation-words.ts";
import { plain, type Units } from "../print/units.ts";

const MANUAL = `
The main jet, clip and screw for other heights and temperatures, from the setup that
is fitted and the air it was last noted in: it is taken to be right there. When it is
not, mend that first (jetwright next).

  jetwright chart shop.jsonl --bike bramble
  jetwright chart shop.jsonl --bike bramble --heights 0,1000,2000 --temperatures 0,20,30

A cell such as "172 /2" is main jet 172 with the clip in groove 2. Main jets are the
next whole number on the rich side; --drawer uses only those the drawer holds.

A ride over several places: name, height and the coldest it will be there. The lowest,
coldest place decides the main jet, since lean at full throttle ruins an engine.

  jetwright chart shop.jsonl --bike bramble --trip "valley:300m:12C,pass:2100m:2C"
`;

export const chart: Command = {
  name: "chart",
  summary: "main jet, clip and screw by height and temperature, and for a ride",
  usage: [
    "jetwright chart LOG [--bike ID]",
    'jetwright chart LOG [--bike ID] --trip "NAME:HEIGHT:COLDEST,..."',
  ],
  manual: MANUAL,
  flags: {
    ...BIKE_FLAG,
    heights: { type: "text", value: "0,1000", help: "Rows, above sea level; 0 to 3000 m if left out" },
    temperatures: { type: "text", value: "0,20", help: "Columns; -5 to 35 °C if left out" },
    trip: { type: "text", value: "PLACES", help: "One main jet for a ride, and the way back" },
    drawer: { type: "switch", help: "Only main jets the drawer holds, and the one fitted" },
  },
  operands: [0, 1],
  run,
};

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  const us = args.on("us");
  const asked = readAsked(args, us);
  if (!asked.ok) return asked;
  const of = await bikeOfLog(args.operands[0], args.text("bike"), io);
  if (!of.ok) return of;
  const { bike, problems } = of.value;
  const mains = args.on("drawer") ? mainsAtHand(of.value) : undefined;
  const options = mains === undefined ? {} : { mains };
  const { points: places, heights, temperatures } = asked.value;
  const made = places === null ? altitudeChart(bike.now, heights, temperatures, options) : accept(null);
  if (!made.ok) return made;
  const trip = places === null ? accept(null) : planTrip(bike.now, places, options);
  if (!trip.ok) return trip;
  const head = [
    bikeTitle(of.value.story),
    ...wrap(fittedLine(bike.now.setup), look.width),
    ...wrap(`Taken to be right at ${airWords(bike.now.air, look.units)}.`, look.width),
    "",
  ];
  const body = made.value === null ? tripLines(trip.value!, look) : chartLines(made.value, look);
  return accept({
    json: jsonOf(of.value, made.value, trip.value),
    text: [
      ...head,
      ...body,
      "",
      ...points("Assumed or doubtful", worthSaying(bike.warnings), look.width),
    ].join("\n"),
    problems,
  });
}

interface Asked {
  readonly heights: readonly ReturnType<typeof fromMetre>[];
  readonly temperatures: readonly ReturnType<typeof fromCelsius>[];
  readonly points: Parameters<typeof planTrip>[1] | null;
}

const usual = {
  metric: {
    heights: [0, 500, 1000, 1500, 2000, 2500, 3000].map(fromMetre),
    temperatures: [-5, 5, 15, 25, 35].map(fromCelsius),
  },
  us: {
    heights: [0, 2000, 4000, 6000, 8000, 10_000].map(fromFoot),
    temperatures: [20, 40, 60, 80, 100].map(fromFahrenheit),
  },
};

function readAsked(args: Arguments, us: boolean): Outcome<Asked> {
  const { heights: rows, temperatures: columns } = us ? usual.us : usual.metric;
  const [h, t, trip] = [args.text("heights"), args.text("temperatures"), args.text("trip")];
  const heights =
    h === undefined ? accept(rows) : listOf("--heights", h, (one) => heightIn("--heights", one, us));
  if (!heights.ok) return heights;
  const temperatures =
    t === undefined
      ? accept(columns)
      : listOf("--temperatures", t, (one) => temperatureIn("--temperatures", one, us));
  if (!temperatures.ok) return temperatures;
  const places = trip === undefined ? accept(null) : readTrip(trip, us);
  if (!places.ok) return places;
  return accept({ heights: heights.value, temperatures: temperatures.value, points: places.value });
}

/** Main jets of the drawer that are numbered as the one fitted, and that one. */
function mainsAtHand({ bike }: BikeOfLog): number[] | undefined {
  const fitted = bike.now.setup.main.part;
  if (fitted === null) return undefined;
  const owned = bike.drawer.mains.filter(
    ({ part, count }) => count > 0 && part.numbering === fitted.numbering,
  );
  return [...new Set([fitted.number, ...owned.map(({ part }) => part.number)])].sort((a, b) => a - b);
}

function chartLines(made: AltitudeChart, { units, width }: Look): string[] {
  const grid = (cell: (one: ChartCell) => string): string[] =>
    table(
      [
        ["", ...made.temperatures.map(units.temperature)],
        ...made.cells.map((row, i) => [units.height(made.heights[i]!), ...row.map(cell)]),
      ],
      3,
    );
  const all = made.cells.flat();
  const lines: string[] = [];
  if (all.some(({ main }) => main !== null)) {
    const clips = all.some(({ clip }) => clip !== null);
    lines.push(`Main jet${clips ? " / clip groove from the top" : ""}`, "");
    lines.push(...grid(({ main, clip }) => `${main ?? "-"}${clips ? ` /${clip ?? "-"}` : ""}`), "");
  } else lines.push(...wrap("The main jet fitted is not known, so there is none to tell here.", width), "");
  if (all.some(({ screwTurns }) => screwTurns !== null)) {
    lines.push("Screw, turns out, with the pilot jet left in", "");
    lines.push(
      ...grid(({ screwTurns }) => (screwTurns === null ? "-" : turnsText(Math.round(screwTurns * 4) / 4))),
      "",
    );
  }
  if (all.some(({ exactPilot }) => exactPilot !== null)) {
    lines.push("Pilot jet, exact, with the screw left alone", "");
    lines.push(...grid(({ exactPilot }) => (exactPilot === null ? "-" : plain(exactPilot, 1))), "");
  }
  lines.push("Full throttle if left alone, % richer", "");
  lines.push(...grid(({ unchanged }) => signedWhole(percentOf(unchanged.at(-1)!))));
  return lines;
}

const signedWhole = (x: number): string => `${Math.round(x) > 0 ? "+" : ""}${Math.round(x) + 0}`;

function tripLines(trip: Trip, { width, units }: Look): string[] {
  const safe = trip.safeMain ?? trip.exactSafeMain;
  return [
    ...wrap(
      `Ride on main jet ${plain(safe, 1)}. ${oneLine(trip.decides.name)} decides it: ${units.height(trip.decides.height)} at ${units.temperature(trip.decides.temperature)} is the densest air of the ride.`,
      width,
    ),
    "",
    ...points(
      "On the way",
      trip.stops.map((stop) => stopText(stop, safe, units)),
      width,
    ),
    ...points("Mind", worthSaying(trip.warnings), width),
  ];
}

const FULL = OPENINGS.length - 1;
const HALF = OPENINGS.findIndex((opening) => opening >= 0.5);

function stopText(
  { point, feel, main, refitBelow }: Trip["stops"][number],
  safe: number,
  units: Units,
): string {
  const first = `${oneLine(point.name)}, ${units.height(point.height)}: ${felt(feel[FULL]!)} at full, ${felt(feel[HALF]!)} at 1/2.`;
  if (main === null || main >= safe) return first;
  const back =
    refitBelow === null
      ? "before you ride where it is lower or colder"
      : `before you go below ${units.height(refitBelow)}, sooner if it turns colder`;
  return `${first} Main ${plain(main, 1)} would suit it; put the ${plain(safe, 1)} back ${back}.`;
}

function felt(error: number): string {
  const percent = Math.round(percentOf(error));
  return percent === 0 ? "right" : `${Math.abs(percent)} % ${percent > 0 ? "rich" : "lean"}`;
}

const feelJson = (errors: readonly number[]) =>
  errors.map((error, i) => ({ opening: openingJson(OPENINGS[i]!), richerPercent: percentOf(error) }));

function jsonOf({ bike, problems }: BikeOfLog, made: AltitudeChart | null, trip: Trip | null): ChartOutput {
  return {
    command: "chart",
    v: 1,
    bike: bike.bike,
    fitted: setupJson(bike.now.setup),
    ranIn: airJson(bike.now.air),
    cells:
      made?.cells.flat().map((cell) => ({
        heightM: cell.height,
        temperatureC: toCelsius(cell.temperature),
        leftAlone: feelJson(cell.unchanged),
        exactMain: cell.exactMain,
        main: cell.main,
        exactClip: cell.exactClip,
        clip: cell.clip,
        exactPilot: cell.exactPilot,
        screwTurnsOut: cell.screwTurns,
      })) ?? null,
    trip: trip && {
      decides: trip.decides.name,
      safeMain: trip.safeMain,
      exactSafeMain: trip.exactSafeMain,
      stops: trip.stops.map(({ point, feel, exactMain, main, refitBelow, text }) => ({
        name: point.name,
        heightM: point.height,
        temperatureC: toCelsius(point.temperature),
        withSafeMain: feelJson(feel),
        exactMain,
        main,
        refitBelowM: refitBelow,
        text,
      })),
      warnings: worthSaying(trip.warnings),
    },
    warnings: bike.warnings.map(warningJson),
    problems: problems.map(problemJson),
  };
}
