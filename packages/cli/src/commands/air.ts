import {
  accept,
  type Corrections,
  correctFor,
  type Drawer,
  densityAltitude,
  EMPTY_DRAWER,
  type Metre,
  type Outcome,
  openingName,
  relativeHumidity,
  type Setup,
  SPOKEN_OPENINGS,
  STANDARD_AIR,
  warningText,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { AIR_FLAGS, type AirOfFlags, airOfFlags } from "../input/air-flags.ts";
import { BIKE_FLAG } from "../input/bike-flag.ts";
import { type BikeOfLog, bikeOfLog } from "../input/bike-of-log.ts";
import type { Io } from "../io.ts";
import { type AirOutput, correctionsJson } from "../output/air-output.ts";
import { airJson, problemJson, setupJson, warningJson } from "../output/shapes.ts";
import { comparisonSentence, signed } from "../print/comparison-lines.ts";
import { labelled, table, wrap } from "../print/layout.ts";
import { percentOf } from "../print/mixture-words.ts";
import { points, worthSaying } from "../print/points.ts";
import { airWords, bikeTitle, fittedLine } from "../print/situation-words.ts";
import { plain } from "../print/units.ts";

const MANUAL = `
What air it is, from readings or a weather report, and what it does to a setup.
Dense air wants more fuel: the same jets run lean. Thin air makes them rich.

By hand: a temperature with a height, or with a pressure.

  jetwright air --temperature 24C --height 1500m --humidity 40%
  jetwright air --temperature 75F --pressure 29.92inHg --sea-level --height 5000ft

A weather page gives the pressure reduced to sea level: say --sea-level with it and
give the height. A barometer in your hand at the place needs neither.

From a report of the nearest airfield, with the height where you ride:

  jetwright air --report "METAR EDUD 021020Z 24004KT 9999 17/09 Q1018" --height 450m

With a log: what the new air does to the bike's setup, and how to put it right.

  jetwright air --temperature 5C --height 1600m --log shop.jsonl --bike bramble
`;

export const air: Command = {
  name: "air",
  summary: "what air it is, and what it does to a setup",
  usage: [
    "jetwright air --temperature 24C --height 1500m [--log LOG --bike ID]",
    'jetwright air --report "METAR ..." --height 450m',
  ],
  manual: MANUAL,
  flags: {
    ...AIR_FLAGS,
    log: { type: "text", value: "LOG", help: "Say what this air does to the setup of a bike of this log" },
    ...BIKE_FLAG,
  },
  operands: [0, 0],
  run,
};

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  const given = airOfFlags(args, io.now());
  if (!given.ok) return given;
  const log = args.text("log") ?? (args.text("bike") === undefined ? undefined : "-");
  const effect = log === undefined ? accept(null) : await effectOn(given.value, log, args, io);
  if (!effect.ok) return effect;
  const problems = effect.value?.of.problems ?? [];
  return accept({
    json: jsonOf(given.value, effect.value),
    text: textOf(given.value, effect.value, look),
    problems,
  });
}

interface Effect {
  readonly of: BikeOfLog;
  readonly corrections: Corrections;
}

async function effectOn(
  { air: now }: AirOfFlags,
  log: string,
  args: Arguments,
  io: Io,
): Promise<Outcome<Effect>> {
  const of = await bikeOfLog(log, args.text("bike"), io);
  if (!of.ok) return of;
  const { bike } = of.value;
  const corrections = correctFor(bike.now, now, bike.now.fuel, emptyIsNone(bike.drawer));
  return corrections.ok ? accept({ of: of.value, corrections: corrections.value }) : corrections;
}

const emptyIsNone = (drawer: Drawer): Drawer | null =>
  Object.keys(EMPTY_DRAWER).every((side) => drawer[side as keyof Drawer].length === 0) ? null : drawer;

const shareOfStandard = ({ air: now }: AirOfFlags): number =>
  (100 * now.dryDensity) / STANDARD_AIR.dryDensity;

const humidityPercent = ({ air: now }: AirOfFlags): number => 100 * relativeHumidity(now);

function jsonOf(given: AirOfFlags, effect: Effect | null): AirOutput {
  const now = given.air;
  return {
    command: "air",
    v: 1,
    air: airJson(now),
    relativeHumidityPercent: humidityPercent(given),
    densityAltitudeM: densityAltitude(now.density),
    shareOfStandardPercent: shareOfStandard(given),
    doubts: now.doubts.map(({ cause, relativeSd }) => ({ cause, sdPercent: 100 * relativeSd })),
    report: given.report?.text ?? null,
    bike: effect && {
      bike: effect.of.bike.bike,
      fitted: setupJson(effect.of.bike.now.setup),
      ranIn: airJson(effect.of.bike.now.air),
      corrections: correctionsJson(effect.corrections),
    },
    warnings: now.warnings.map(warningJson),
    problems: effect?.of.problems.map(problemJson) ?? [],
  };
}

function textOf(given: AirOfFlags, effect: Effect | null, look: Look): string {
  const { width, units } = look;
  const now = given.air;
  const share = shareOfStandard(given);
  const less = Math.abs(Math.round(share - 100));
  const side = less === 0 ? "as dense as" : `${less} % ${share < 100 ? "thinner" : "denser"} than`;
  return [
    ...wrap(`The air is ${side} standard air at sea level, for the engine.`, width),
    "",
    ...labelled("Air", `${airWords(now, units)}, humidity ${Math.round(humidityPercent(given))} %`, width),
    ...labelled(
      "Density",
      `${now.density.toFixed(3)} kg/m³, of which dry ${now.dryDensity.toFixed(3)} kg/m³ (give or take ${plain(100 * now.relativeSd, 1)} %)`,
      width,
    ),
    ...labelled(
      "Like",
      `${units.height(densityAltitude(now.density) as Metre)} in standard air (density altitude)`,
      width,
    ),
    ...(given.report === null ? [] : labelled("Report", given.report.text, width)),
    "",
    ...points("Mind", worthSaying(now.warnings), width),
    ...(effect === null ? [] : effectLines(effect, look)),
  ].join("\n");
}

function effectLines({ of, corrections }: Effect, { width, units }: Look): string[] {
  const { bike, story } = of;
  const { unchanged, everyOpening, mainAlone, fromDrawer, rootRule } = corrections;
  const rows: string[][] = [["", ...SPOKEN_OPENINGS.map(openingName)]];
  const row = (name: string, at: readonly { opening: number; logRatio: number }[]): void => {
    const shown = at.filter(({ opening }) => SPOKEN_OPENINGS.some((one) => one === opening));
    rows.push([name, ...shown.map(({ logRatio }) => signed(percentOf(logRatio)))]);
  };
  row("left alone", unchanged.at);
  row("every opening", everyOpening.remaining);
  if (mainAlone.ok) row("main jet alone", mainAlone.value.remaining);
  if (fromDrawer !== null) row("from the drawer", fromDrawer.remaining);
  const main = bike.now.setup.main.part;
  const ways: string[] = [];
  if (main !== null && mainAlone.ok) {
    const number = mainAlone.value.setup.main.part?.number ?? main.number;
    const root = rootRule === null ? "" : `; the fourth-root rule says ${plain(rootRule, 1)}`;
    ways.push(`main jet alone: ${main.number} to ${plain(number, 1)}, or the next size up${root}`);
  } else if (!mainAlone.ok) ways.push(`main jet alone: ${mainAlone.detail}`);
  const scaled = [
    everyOpening.main === null ? null : `main ${plain(everyOpening.main, 1)}`,
    everyOpening.pilot === null ? null : `pilot ${plain(everyOpening.pilot, 1)}`,
  ].filter((part) => part !== null);
  ways.push(
    `every opening: area times ${everyOpening.areaFactor.toFixed(3)}${scaled.length > 0 ? ` (${scaled.join(", ")}, the needle gap as well)` : ""}`,
  );
  if (fromDrawer !== null) ways.push(`from the drawer: ${partsSaid(fromDrawer.setup)}`);
  const warnings = [
    ...everyOpening.warnings,
    ...(fromDrawer?.warnings ?? []),
    ...unchanged.notes.map((note) => warningText(note, english)),
  ];
  return [
    "",
    ...wrap(`${bikeTitle(story)}, right as it is at ${airWords(bike.now.air, units)}`, width),
    ...wrap(fittedLine(bike.now.setup), width),
    "",
    ...wrap(comparisonSentence(unchanged, "In this air, left alone, it"), width),
    "",
    ...points("Ways to put it right", ways, width),
    ...table([["Richer by, %", ...rows[0]!.slice(1)], ...rows.slice(1)], 4),
    "",
    ...points("Mind as well", [...new Set(warnings)], width),
  ];
}

function partsSaid({ main, pilot, clip }: Setup): string {
  const parts = [
    main.part && `main ${main.part.number}`,
    pilot.part && `pilot ${pilot.part.number}`,
    clip.part && `clip in groove ${clip.part}`,
  ];
  return parts.filter((part) => part !== null).join(", ");
}
