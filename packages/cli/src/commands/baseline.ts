import {
  accept,
  type BikeToStart,
  fromCubicCentimetre,
  fromMillimetre,
  type JetNumbering,
  type KnownGood,
  type Outcome,
  readUse,
  refuse,
  type StartingPoint,
  standardFuel,
  startingPoint,
  startingPointText,
  toCubicCentimetre,
  toMillimetre,
  USES,
  warningText,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { starting } from "@jetwright/core/words/en/starting";
import { type Entry, knownGoodSetups, type Problem, replay } from "@jetwright/records";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { AIR_FLAGS, airOfFlags } from "../input/air-flags.ts";
import { readPlain } from "../input/quantities.ts";
import { readLogFrom } from "../input/read-log.ts";
import type { Io } from "../io.ts";
import type { BaselineOutput } from "../output/baseline-output.ts";
import { airJson, problemJson } from "../output/shapes.ts";
import { wrap } from "../print/layout.ts";
import { airWords } from "../print/situation-words.ts";

const MANUAL = `
A setup to begin with, for a rider who calls and whose bike you have never seen. It
comes with its spread and with what it rests on: theory, and the setups your own log
marks as good (known-good-marked), brought to the caller's air.

  jetwright baseline --strokes 2 --displacement 249cc --bore 36mm --use enduro --temperature 18C --height 450m
  jetwright baseline --strokes 2 --displacement 249cc --temperature 18C --height 450m --log shop.jsonl

Ask the caller for the bore (measured with a caliper at the engine side), the side the
small screw sits on, and what the jet numbers mean. What is not known widens the spread.
`;

export const baseline: Command = {
  name: "baseline",
  summary: "a starting setup for a bike nobody has set up yet",
  usage: ["jetwright baseline --strokes 2 --displacement 249cc --temperature 18C --height 450m"],
  manual: MANUAL,
  flags: {
    strokes: { type: "text", value: "2", help: "2 or 4" },
    displacement: { type: "text", value: "249cc", help: "What this one carburetor feeds" },
    bore: { type: "text", value: "36mm", help: "Of the carburetor, at the engine side" },
    use: { type: "text", value: "WORD", help: "trail, enduro or race, or what it is ridden for" },
    screw: { type: "text", value: "SIDE", help: "air (filter side) or fuel (engine side)" },
    numbering: {
      type: "text",
      value: "WORD",
      help: "bore or flow: what its jet numbers mean; both if left out",
    },
    log: { type: "text", value: "LOG", help: "Your shop's log, for its known-good setups" },
    ...AIR_FLAGS,
  },
  operands: [0, 0],
  run,
};

/** Kinds that tell of a known-good setup. */
const NEEDED = new Set([
  "bike-described",
  "setup-fitted",
  "air-measured",
  "fuel-used",
  "known-good-marked",
  "needle-measured",
  "record-struck",
]);

interface Shop {
  readonly good: readonly KnownGood[];
  readonly problems: readonly Problem[];
}

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  const bike = readBike(args);
  if (!bike.ok) return bike;
  const air = airOfFlags(args, io.now());
  if (!air.ok) return air;
  const shop = await readShop(args.text("log"), io);
  if (!shop.ok) return shop;
  const { strokes } = bike.value;
  const point = startingPoint(bike.value, shop.value.good, {
    air: air.value.air,
    fuel: standardFuel(strokes),
  });
  if (!point.ok) return point;
  return accept({
    json: jsonOf(point.value, shop.value.problems),
    text: textOf(point.value, look),
    problems: shop.value.problems,
  });
}

async function readShop(path: string | undefined, io: Io): Promise<Outcome<Shop>> {
  if (path === undefined) return accept({ good: [], problems: [] });
  const hold = (entry: Entry): boolean => entry.reading === "used" && NEEDED.has(entry.kind);
  const log = await readLogFrom(path, io, { hold });
  if (!log.ok) return log;
  const good = knownGoodSetups(replay(log.value.entries)).map(({ engine, situation, description }) => ({
    engine,
    situation,
    use: readUse(description.use ?? ""),
  }));
  return accept({ good, problems: log.value.problems });
}

function oneOf<Word extends string>(
  args: Arguments,
  flag: string,
  words: readonly Word[],
): Outcome<Word | null> {
  const text = args.text(flag);
  if (text === undefined) return accept(null);
  const word = words.find((one) => one === text.toLowerCase());
  return word === undefined
    ? refuse("arguments", `--${flag} "${text}" is not one of ${words.join(", ")}.`)
    : accept(word);
}

function size(
  args: Arguments,
  flag: string,
  units: readonly string[],
  example: string,
): Outcome<number | null> {
  const text = args.text(flag);
  return text === undefined ? accept(null) : readPlain(`--${flag}`, text, units, example);
}

function readBike(args: Arguments): Outcome<BikeToStart> {
  const strokes = oneOf(args, "strokes", ["2", "4"]);
  if (!strokes.ok) return strokes;
  if (strokes.value === null)
    return refuse("no-strokes", "Two-stroke or four-stroke? Add --strokes 2 or --strokes 4.");
  const displacement = size(args, "displacement", ["cc", "ccm", "cm3", "cm³", "ml"], "249cc");
  if (!displacement.ok) return displacement;
  const bore = size(args, "bore", ["mm"], "36mm");
  if (!bore.ok) return bore;
  const screwKind = oneOf(args, "screw", ["air", "fuel"]);
  if (!screwKind.ok) return screwKind;
  const numbering: Outcome<JetNumbering | null> = oneOf(args, "numbering", ["bore", "flow"]);
  if (!numbering.ok) return numbering;
  const said = args.text("use");
  const use = said === undefined ? null : readUse(said);
  if (said !== undefined && use === null) {
    return refuse("arguments", `--use "${said}" is not understood. Say ${USES.join(", ")}.`);
  }
  return accept({
    strokes: strokes.value === "2" ? 2 : 4,
    displacement: displacement.value === null ? null : fromCubicCentimetre(displacement.value),
    bore: bore.value === null ? null : fromMillimetre(bore.value),
    use,
    screwKind: screwKind.value,
    mainNumbering: numbering.value,
    pilotNumbering: numbering.value,
  });
}

function textOf(point: StartingPoint, { width, units }: Look): string {
  const air = `For air of ${airWords(point.place.air, units)} at the place.`;
  return startingPointText(point, english, starting)
    .split("\n")
    .flatMap((line) => {
      if (line.startsWith("For air of ")) return [air];
      const indent = /^ *(?:- |\d+\. )?/.exec(line)![0];
      if (line.length <= width) return [line];
      const rest = wrap(line.slice(indent.length), width - indent.length - (indent.trim() === "" ? 2 : 0));
      const under = indent.trim() === "" ? `${indent}  ` : " ".repeat(indent.length);
      return rest.map((part, i) => (i === 0 ? indent : under) + part);
    })
    .join("\n");
}

function jsonOf(point: StartingPoint, problems: readonly Problem[]): BaselineOutput {
  const { bike } = point;
  return {
    command: "baseline",
    v: 1,
    engine: {
      strokes: bike.strokes,
      displacementCc: bike.displacement === null ? null : toCubicCentimetre(bike.displacement),
      use: bike.use,
      boreMm: toMillimetre(point.bore),
    },
    air: airJson(point.place.air),
    figures: point.figures.map(({ part, numbering, start, low, high, restsOn }) => ({
      part,
      numbering,
      start,
      low,
      high,
      restsOn: [...starting.restsOn(restsOn)],
    })),
    needle: starting.needle(point.needlesAlike),
    firstRide: [...starting.firstRide(bike.strokes)],
    afterwards: [...starting.afterwards(bike.screwKind)],
    leftOut: point.leftOut.map(({ detail }) => detail),
    warnings: point.warnings.map((warning) => warningText(warning, english)),
    problems: problems.map(problemJson),
  };
}
