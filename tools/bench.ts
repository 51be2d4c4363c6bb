import { BENCHES } from "./benches.ts";

/**
 * Prints how long things take on this machine, and the ratios between them in the same run: only the ratios can be
 * compared between machines. `npm run bench` runs all; `npm run bench -- belief` those whose name holds a word.
 */
const RUNS = 15;

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

interface Taken {
  readonly milliseconds: number;
  /** Of the processor alone: what it would take on an idle machine, the engine's own helper threads included. */
  readonly worked: number;
}

function timed(work: () => void): Taken {
  const before = process.cpuUsage();
  const from = performance.now();
  work();
  const milliseconds = performance.now() - from;
  const { user, system } = process.cpuUsage(before);
  return { milliseconds, worked: (user + system) / 1000 };
}

const wanted = process.argv[2] ?? "";
for (const { topic, rows, ratios, runs = RUNS, notes } of BENCHES.filter(({ topic }) =>
  topic.includes(wanted),
)) {
  console.log(`\n${topic}\n${"=".repeat(topic.length)}`);
  const made = rows.map(({ name, make }) => ({ name, work: make() }));
  if (runs > 1) for (const { work } of made) work();
  // All rows in turn, again and again, so that a busy spell of the machine hits them alike.
  const times = new Map(made.map(({ name }) => [name, [] as Taken[]]));
  for (let run = 0; run < runs; run++) {
    for (const { name, work } of made) times.get(name)!.push(timed(work));
  }
  for (const { name } of made) {
    const taken = times.get(name)!.map(({ milliseconds }) => milliseconds);
    const worked = middle(times.get(name)!.map((each) => each.worked));
    console.log(
      `${middle(taken).toFixed(2).padStart(10)} ms  ${name}  (least ${Math.min(...taken).toFixed(2)}, processor ${worked.toFixed(2)}, median of ${runs})`,
    );
  }
  for (const [over, under] of ratios) {
    const each = times.get(over)!.map(({ worked }, run) => worked / times.get(under)![run]!.worked);
    console.log(`${middle(each).toPrecision(3).padStart(10)} ×   ${over} : ${under}`);
  }
  for (const note of notes?.() ?? []) console.log(`${"".padStart(10)}     ${note}`);
}
