import {
  accept,
  compare as compareSituations,
  type Outcome,
  partText,
  refuse,
  SETUP_ORDER,
  type Situation,
  warningText,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { AS_FOUND, type CaseWarning, type Problem, situationOfRecord } from "@jetwright/records";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { BIKE_FLAG } from "../input/bike-flag.ts";
import { type BikeOfLog, bikeOfLog } from "../input/bike-of-log.ts";
import { readSetupFile } from "../input/setup-file.ts";
import type { Io } from "../io.ts";
import { type CompareOutput, comparisonJson, sideJson } from "../output/compare-output.ts";
import { problemJson, warningJson } from "../output/shapes.ts";
import { comparisonLines, comparisonSentence } from "../print/comparison-lines.ts";
import { dayOf } from "../print/dates.ts";
import { hanging, wrap } from "../print/layout.ts";
import { points, worthSaying } from "../print/points.ts";
import { oneLine } from "../print/printable.ts";
import { airWords, bikeTitle } from "../print/situation-words.ts";

const MANUAL = `
How much richer or leaner one setup runs than another, at every opening, and which
part does it. Steady running; it cannot tell which of the two is right.

Two setups of one bike in a log: what is fitted now against the setup before it.
--from and --to take the id of a setup, a ride or a test instead, or "as-found". Each stands in the
air it was ridden in, so the table shows parts and air apart.

  jetwright compare shop.jsonl --bike bramble
  jetwright compare shop.jsonl --bike bramble --from r12 --to now

Two files. Each holds "bike", "setup", "air" and "fuel", written as in a log. What the
second leaves out is as in the first, so a file with one jet in it will do:

  a.json  {"bike": {"engine": {"strokes": 2}, "carburetor": {"screw": "air"}},
           "setup": {"main": {"number": 175}, "pilot": {"number": 42}},
           "air": {"temperatureC": 18, "heightM": 450}}
  b.json  {"setup": {"main": {"number": 170}}, "air": {"temperatureC": 5, "heightM": 1600}}

  jetwright compare a.json b.json
`;

export const compare: Command = {
  name: "compare",
  summary: "how much richer or leaner one setup runs than another",
  usage: ["jetwright compare LOG [--bike ID] [--from ID] [--to ID]", "jetwright compare A.json B.json"],
  manual: MANUAL,
  flags: {
    ...BIKE_FLAG,
    from: {
      type: "text",
      value: "ID",
      help: "A setup, ride or test of the log; the setup before now if left out",
    },
    to: { type: "text", value: "ID", help: 'The same, or "now"; now if left out' },
  },
  operands: [0, 2],
  run,
};

interface Side {
  readonly name: string;
  readonly situation: Situation;
}

interface Sides {
  readonly title: string;
  readonly from: Side;
  readonly to: Side;
  readonly warnings: readonly CaseWarning[];
  readonly problems: readonly Problem[];
}

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  const sides = args.operands.length === 2 ? ofFiles(args) : await ofLog(args, io);
  if (!sides.ok) return sides;
  const { from, to, warnings, problems, title } = sides.value;
  const comparison = compareSituations(from.situation, to.situation);
  if (!comparison.ok) return comparison;
  const json: CompareOutput = {
    command: "compare",
    v: 1,
    from: sideJson(from.name, from.situation),
    to: sideJson(to.name, to.situation),
    comparison: comparisonJson(comparison.value),
    warnings: warnings.map(warningJson),
    problems: problems.map(problemJson),
  };
  const { width, units } = look;
  const text = [
    ...wrap(title, width),
    "",
    ...hanging("From  ", `${from.name}: ${airWords(from.situation.air, units)}`, width),
    ...hanging("To    ", `${to.name}: ${airWords(to.situation.air, units)}`, width),
    ...changesBetween(from.situation, to.situation).flatMap((line) => hanging("      ", line, width)),
    "",
    ...wrap(comparisonSentence(comparison.value, "The second"), width),
    "",
    ...comparisonLines(comparison.value, width),
    "",
    ...points("Assumed or doubtful", worthSaying(warnings), width),
  ].join("\n");
  return accept({ json, text, problems });
}

/** The parts that differ, each before and after. */
function changesBetween(from: Situation, to: Situation): string[] {
  const lines = SETUP_ORDER.flatMap((part) => {
    const [before, after] = [partText(from.setup, part), partText(to.setup, part)];
    return before === after ? [] : [`${oneLine(before)} → ${oneLine(after)}`];
  });
  return lines.length === 0 ? ["the same parts"] : lines;
}

function ofFiles(args: Arguments): Outcome<Sides> {
  const [a, b] = args.operands as [string, string];
  for (const flag of ["bike", "from", "to"]) {
    if (args.text(flag) !== undefined) {
      return refuse(
        "arguments",
        `--${flag} goes with a log and not with two setup files. See: jetwright compare --help`,
      );
    }
  }
  const from = readSetupFile(a);
  if (!from.ok) return from;
  const to = readSetupFile(b, a);
  if (!to.ok) return to;
  const said = new Set(from.value.warnings.map((warning) => warningText(warning, english)));
  return accept({
    title: `${b} against ${a}`,
    from: { name: a, situation: from.value.now },
    to: { name: b, situation: to.value.now },
    warnings: [
      ...from.value.warnings,
      ...to.value.warnings.filter((warning) => !said.has(warningText(warning, english))),
    ],
    problems: [],
  });
}

async function ofLog(args: Arguments, io: Io): Promise<Outcome<Sides>> {
  const of = await bikeOfLog(args.operands[0], args.text("bike"), io);
  if (!of.ok) return of;
  const { story, bike, problems } = of.value;
  const to = sideOf(of.value, args.text("to") ?? "now");
  if (!to.ok) return to;
  const named = args.text("from");
  const before = story.setups.at(-2);
  if (named === undefined && (before === undefined || Object.keys(before.parts).length === 0)) {
    return refuse(
      "nothing-to-compare",
      `Only one setup of "${bike.bike}" is in the log. Name a ride with --from, or compare two setup files.`,
    );
  }
  const from = sideOf(of.value, named ?? before?.record ?? AS_FOUND);
  if (!from.ok) return from;
  return accept({
    title: bikeTitle(story),
    from: from.value,
    to: to.value,
    warnings: bike.warnings,
    problems,
  });
}

function sideOf({ story, bike, state }: BikeOfLog, record: string): Outcome<Side> {
  if (record === "now") return accept({ name: "fitted now", situation: bike.now });
  const situation = situationOfRecord(state, bike.bike, record);
  if (!situation.ok) return situation;
  if (record === AS_FOUND) return accept({ name: "as found", situation: situation.value });
  const entry = story.entries.find(({ id }) => id === record);
  const day = entry === undefined ? "" : `${dayOf(entry)}, `;
  return accept({
    name: `${day}${entry?.kind.replace("-", " ") ?? "record"} ${record}`,
    situation: situation.value,
  });
}
