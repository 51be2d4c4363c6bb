import { accept, type Outcome } from "@jetwright/core";
import { type Entry, type Log, type Problem, replay } from "@jetwright/records";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { readLogFrom } from "../input/read-log.ts";
import type { Io } from "../io.ts";
import type { CheckOutput } from "../output/check-output.ts";
import { problemJson } from "../output/shapes.ts";
import { table, wrap } from "../print/layout.ts";
import { oneLine } from "../print/printable.ts";
import { problemText } from "../print/problem-lines.ts";

const MANUAL = `
Reads a whole log and tells what counts, by kind and bike, and everything that does
not: the line, where in the record, what is wrong and how to mend it. The log itself
is never touched: mend it in your editor, or strike the record and write a new one.

  jetwright check shop.jsonl

Kinds and versions this tool does not know are kept, counted, and no fault.
Exit code 2 when something was left out.
`;

export const check: Command = {
  name: "check",
  summary: "what of a log counts, and how to mend the rest",
  usage: ["jetwright check LOG"],
  manual: MANUAL,
  flags: {},
  operands: [0, 1],
  run,
};

/** Kinds of which one record can contradict another. */
const FIT_TOGETHER = new Set([
  "setup-fitted",
  "parts-counted",
  "parts-bought",
  "parts-used",
  "order-opened",
  "order-closed",
  "record-struck",
]);
/** Of those, so many are held to look how they fit together. */
const MOST_HELD = 20_000;

/** Counts every record that passes and holds the few that must fit together. */
class Tally {
  readonly kinds = new Map<string, number>();
  readonly bikes = new Map<string, number>();
  readonly #ids = new Set<string>();
  held = 0;

  readonly hold = (entry: Entry): boolean => {
    this.#ids.add(entry.id);
    if (entry.reading !== "used") return false;
    count(this.kinds, entry.kind);
    if (entry.bike !== null) count(this.bikes, entry.bike);
    return FIT_TOGETHER.has(entry.kind) && this.held++ < MOST_HELD;
  };

  has = (id: string): boolean => this.#ids.has(id);
}

const count = (counts: Map<string, number>, name: string): void => {
  counts.set(name, (counts.get(name) ?? 0) + 1);
};

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  const tally = new Tally();
  const log = await readLogFrom(args.operands[0], io, { hold: tally.hold });
  if (!log.ok) return log;
  const between = tally.held > MOST_HELD ? [] : misfits(log.value, tally);
  const problems = [...log.value.problems, ...between.filter(({ path }) => path === "body.record")];
  const notes = [...log.value.notes, ...between.filter(({ path }) => path !== "body.record")];
  const json = jsonOf(log.value, tally, problems, notes);
  return accept({ json, text: textOf(json, tally.held > MOST_HELD, look), problems });
}

/** What does not fit together between records; strikes only of records that are nowhere in the log. */
function misfits(log: Log, tally: Tally): Problem[] {
  return replay(log.entries).problems.filter(({ path, record }) => {
    if (path !== "body.record") return true;
    const strike = log.entries.find(({ id }) => id === record);
    return !(strike?.reading === "used" && strike.kind === "record-struck" && tally.has(strike.body.record));
  });
}

const sorted = (counts: ReadonlyMap<string, number>): Record<string, number> =>
  Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));

const jsonOf = (
  log: Log,
  tally: Tally,
  problems: readonly Problem[],
  notes: readonly Problem[],
): CheckOutput => ({
  command: "check",
  v: 1,
  lines: log.counts.lines,
  usedByKind: sorted(tally.kinds),
  bikes: sorted(tally.bikes),
  faulty: log.counts.faulty,
  repeated: log.counts.repeated,
  newerVersion: log.counts.newerVersion,
  unknownKinds: { ...log.counts.unknownKinds },
  problems: problems.map(problemJson),
  notes: notes.map(problemJson),
});

const BIKES_SHOWN = 30;

function textOf(found: CheckOutput, tooMany: boolean, { width }: Look): string {
  const used = Object.values(found.usedByKind).reduce((sum, n) => sum + n, 0);
  const bikes = Object.entries(found.bikes);
  const verdict =
    found.problems.length === 0
      ? "Every record counts."
      : `${found.problems.length} ${found.problems.length === 1 ? "thing is" : "things are"} wrong; the rest counts.`;
  const kept = [
    ...Object.entries(found.unknownKinds).map(
      ([kind, n]) => `${n} of the kind ${oneLine(kind)}, which this tool does not know: kept`,
    ),
    ...(found.newerVersion > 0 ? [`${found.newerVersion} of a newer version than this tool: kept`] : []),
    ...(found.repeated > 0 ? [`${found.repeated} met again: counted once`] : []),
    ...(found.faulty > 0 ? [`${found.faulty} that nothing can be made of: kept as written`] : []),
  ];
  return [
    ...wrap(
      `${found.lines} lines, ${used} records in use, ${bikes.length} ${bikes.length === 1 ? "bike" : "bikes"}. ${verdict}`,
      width,
    ),
    "",
    ...table(Object.entries(found.usedByKind).map(([kind, n]) => [`  ${kind}`, String(n)])),
    ...kept.flatMap((line) => wrap(`  ${line}`, width)),
    "",
    ...(bikes.length > 0 ? ["Bikes"] : []),
    ...table(bikes.slice(0, BIKES_SHOWN).map(([bike, n]) => [`  ${bike}`, String(n)])),
    ...(bikes.length > BIKES_SHOWN ? [`  and ${bikes.length - BIKES_SHOWN} more`] : []),
    "",
    ...(tooMany
      ? wrap("The log is too long to look how its records fit together; each by itself was checked.", width)
      : []),
    ...(found.problems.length > 0 ? ["To mend"] : []),
    ...found.problems.flatMap((problem) => indented(problemText(problem, width - 2))),
    "",
    ...(found.notes.length > 0 ? ["Worth a look; nothing was left out for it"] : []),
    ...found.notes.flatMap((problem) => indented(problemText(problem, width - 2))),
  ].join("\n");
}

const indented = (lines: readonly string[]): string[] => lines.map((line) => `  ${line}`);
