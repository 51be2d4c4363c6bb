import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { type EngineSound, type Heard, listen } from "@jetwright/core";
import {
  NOISES,
  noEngine,
  STORIES,
  type Story,
  type Take,
  type TakeSetting,
  take,
  truthFigures,
} from "@jetwright/sound-lab";

/**
 * Measures listening on made sounds and writes docs/sound.md. Seeds from 5000 up are for this alone; those below were
 * used while building. `npm run sound`, ten minutes; `npm run sound -- 1` for the smallest run.
 */
const SIZE = Number(process.argv[2] ?? 4);
const FROM = Number(process.argv[3] ?? 5000);
const OUT = process.argv[4] ?? "docs/sound.md";

interface Row {
  readonly made: Take;
  readonly heard: Heard | null;
  readonly milliseconds: number;
}

const share = (values: readonly number[], part: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
};
const percent = (part: number, whole: number): string =>
  whole === 0 ? "–" : `${((100 * part) / whole).toFixed(1)} %`;
const digits = (x: number, n: number): string => (Number.isFinite(x) ? x.toFixed(n) : "–");

function hear(made: Take, hint: number | null = null): Row {
  const engine: EngineSound = { strokes: made.strokes, cylinders: made.cylinders, idleHint: hint };
  const from = performance.now();
  const heard = listen(made.samples, made.rate, engine, { pictures: false });
  return { made, heard: heard.ok ? heard.value : null, milliseconds: performance.now() - from };
}

function several(stories: readonly Story[], count: number, setting: TakeSetting, offset = 0): Row[] {
  const rows: Row[] = [];
  for (let seed = 0; seed < count; seed++) {
    for (const story of stories) rows.push(hear(take(story, FROM + offset + seed, setting)));
  }
  return rows;
}

interface Frames {
  readonly errors: readonly number[];
  readonly gross: number;
  readonly octave: number;
  readonly unanswered: number;
  readonly all: number;
  /** Confidence said, and whether it was within 3 %. */
  readonly said: readonly (readonly [number, boolean])[];
}

function framesOf(rows: readonly Row[]): Frames {
  const errors: number[] = [];
  const said: (readonly [number, boolean])[] = [];
  let [gross, octave, unanswered, all] = [0, 0, 0, 0];
  for (const { made, heard } of rows) {
    heard?.track.rpm.forEach((rpm, i) => {
      const truth = made.truth.rpm[Math.round(i * heard.track.hop * 1000)] ?? 0;
      if (truth < 650) return;
      all += 1;
      if (rpm === 0) {
        unanswered += 1;
        return;
      }
      const error = Math.abs(rpm / truth - 1);
      errors.push(error);
      said.push([heard.track.confidence[i]!, error < 0.03]);
      if (error > 0.15) {
        gross += 1;
        const leap = Math.abs(Math.log2(rpm / truth));
        if (Math.abs(leap - Math.round(leap)) < 0.1) octave += 1;
      }
    });
  }
  return { errors, gross, octave, unanswered, all, said };
}

const used = (rows: readonly Row[]): Row[] =>
  rows.filter(({ heard }) => heard !== null && heard.doubts.length === 0);

function speedRow(name: string, rows: readonly Row[]): string {
  const kept = used(rows);
  const { errors, gross, octave, unanswered, all } = framesOf(kept);
  return `| ${name} | ${rows.length} | ${percent(rows.length - kept.length, rows.length)} | ${digits(100 * share(errors, 0.5), 2)} | ${digits(100 * share(errors, 0.95), 2)} | ${digits((100 * gross) / errors.length, 2)} (${digits((100 * octave) / errors.length, 2)}) | ${percent(unanswered, all)} |`;
}

/** What the events said against what was put in. */
function eventsOf(rows: readonly Row[]) {
  const hang: number[] = [];
  const dive: number[] = [];
  const idle: number[] = [];
  const said: (readonly [number, boolean])[] = [];
  let [chops, missed, stalls, stallsFound, falseStalls, hunts, huntsFound, falseHunts, snaps, snapsMissed] =
    new Array<number>(10).fill(0) as [
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
      number,
    ];
  for (const { made, heard } of used(rows)) {
    const truth = truthFigures(made);
    const events = heard!.events;
    const stall = events.find((event) => event.kind === "stall");
    if (truth.stallAt === null) {
      if (stall) falseStalls += 1;
    } else {
      stalls += 1;
      if (stall) stallsFound += 1;
    }
    if (stall) said.push([stall.confidence, truth.stallAt !== null]);
    const hunting = events.find((event) => event.kind === "hunting");
    if (truth.hunts) {
      hunts += 1;
      if (hunting) huntsFound += 1;
    } else if (hunting) falseHunts += 1;
    if (hunting) said.push([hunting.confidence, truth.hunts]);
    for (const event of events) {
      if (event.kind === "idle") {
        const error = Math.abs(event.rpm / truth.idleRpm - 1);
        idle.push(error);
        said.push([event.confidence, error < 0.02]);
      }
      if (event.kind === "snap")
        said.push([event.confidence, truth.snaps.some(({ at }) => Math.abs(at - event.at) < 0.5)]);
    }
    for (const snap of truth.snaps) {
      snaps += 1;
      if (!events.some((event) => event.kind === "snap" && Math.abs(event.at - snap.at) < 0.5))
        snapsMissed += 1;
    }
    for (const chop of truth.chops) {
      chops += 1;
      const found = events.find((event) => event.kind === "chop" && Math.abs(event.at - chop.at) < 0.5);
      if (found?.kind !== "chop") {
        missed += 1;
        continue;
      }
      if (truth.stallAt !== null) continue;
      hang.push(Math.abs(found.hangSeconds - chop.hangSeconds));
      let fine = hang.at(-1)! < 0.1;
      if (found.undershootPercent !== null && chop.undershootPercent !== null) {
        dive.push(Math.abs(found.undershootPercent - chop.undershootPercent));
        fine &&= dive.at(-1)! < 3;
      }
      said.push([found.confidence, fine]);
    }
  }
  return {
    hang,
    dive,
    idle,
    said,
    chops,
    missed,
    stalls,
    stallsFound,
    falseStalls,
    hunts,
    huntsFound,
    falseHunts,
    snaps,
    snapsMissed,
  };
}

const BINS = [0, 0.5, 0.7, 0.8, 0.9, 0.95, 1.0001] as const;
function diagram(said: readonly (readonly [number, boolean])[]): string {
  const lines = ["| said | how many | said, mean | true |", "| --- | --- | --- | --- |"];
  BINS.slice(0, -1).forEach((low, i) => {
    const high = BINS[i + 1]!;
    const own = said.filter(([confidence]) => confidence >= low && confidence < high);
    if (own.length === 0) return;
    const mean = own.reduce((sum, [confidence]) => sum + confidence, 0) / own.length;
    lines.push(
      `| ${low} to ${Math.min(1, high)} | ${own.length} | ${mean.toFixed(2)} | ${(own.filter(([, right]) => right).length / own.length).toFixed(2)} |`,
    );
  });
  return lines.join("\n");
}

const step = (what: string): void => console.log(`${new Date().toISOString().slice(11, 19)} ${what}`);
const FOUR = STORIES.filter((story) => story !== "skip");
const half = Math.max(1, Math.floor(SIZE / 2));
step("10 dB and better, two-stroke");
const two = several(STORIES, SIZE, { snr: 10 });
step("four-stroke");
const four = several(FOUR, Math.ceil((2 * SIZE) / 3), { strokes: 4, snr: 10 }, 100);
step("0 dB");
const faint = several(["idle", "snaps", "hang", "dive", "stall"], half, { snr: 0 }, 200);
step("stress");
const few: readonly Story[] = ["idle", "dive"];
const stress: readonly (readonly [string, Row[]])[] = (
  [
    ["second engine, 4300 rpm, −12 dB", { snr: 15, second: { rpm: 4300, decibels: -12 } }],
    ["second engine, as loud", { snr: 15, second: { rpm: 4300, decibels: 0 } }],
    ["shed", { snr: 15, path: { place: "shed" } }],
    ["chain whine, loud", { snr: 15, build: { chain: 3.4, chainLoud: 0.03 } }],
    ["clipped at 15 %", { snr: 15, path: { clip: 0.15 } }],
    ["voice near, 5 dB", { snr: 5, noise: ["voice"] }],
    ["music near, 5 dB", { snr: 5, noise: ["music"] }],
    ["hum, 0 dB", { snr: 0, noise: ["hum"] }],
    ["telephone coding, 3.4 kHz", { snr: 15, path: { telephone: true, to: 3400 } }],
    ["skips half the time at idle", { snr: 15, idleSkip: 0.5 }],
    ["twin, firing evenly", { snr: 15, cylinders: 2 }],
  ] as readonly (readonly [string, TakeSetting])[]
).map(([name, setting], i) => [name, several(few, half, setting, 300 + 20 * i)] as const);
step("not an engine");
const rubbish = NOISES.map((kind) => {
  let accepted = 0;
  // Claps come nearest to an engine: more of them, every second one on a four-stroke's card.
  const count = kind === "claps" ? 4 * SIZE : SIZE;
  for (let seed = 0; seed < count; seed++) {
    const { samples, rate } = noEngine(kind, FROM + 600 + seed);
    const strokes = seed % 2 === 0 ? 2 : 4;
    const heard = listen(samples, rate, { strokes, cylinders: 1, idleHint: null }, { pictures: false });
    if (heard.ok && heard.value.doubts.length === 0) accepted += 1;
  }
  return { kind, count, accepted };
});
step("hints and riding past");
const past = Array.from({ length: half * 2 }, (_, seed) =>
  hear(take("idle", FROM + 700 + seed, { snr: 20, passing: 15, idleRpm: 6500 })),
);
const wrongHint = Array.from({ length: half * 2 }, (_, seed) => {
  const made = take("snaps", FROM + 720 + seed, { snr: 15 });
  return hear(made, 2 * made.idleRpm);
});
const fullSkip = Array.from({ length: half * 2 }, (_, seed) => {
  const made = take("snaps", FROM + 740 + seed, { snr: 15, idleSkip: 1 });
  return hear(made, made.idleRpm);
});
step("speed");
const clip = take("snaps", FROM + 760, { snr: 15 });
const long = new Float32Array(30 * clip.rate);
for (let i = 0; i < long.length; i++) long[i] = clip.samples[i % clip.samples.length]!;
const times: number[] = [];
for (let run = 0; run < 7; run++) {
  const from = process.cpuUsage();
  listen(long, clip.rate, { strokes: 2, cylinders: 1, idleHint: null }, { pictures: false });
  times.push(process.cpuUsage(from).user / 1e6);
}
step("memory");
const memory: {
  readonly stream: readonly number[];
  readonly grew: number;
  readonly resident: number;
} = JSON.parse(
  execFileSync(process.execPath, ["--expose-gc", "--import", "tsx", "tools/sound-memory.ts"], {
    encoding: "utf8",
  }),
);
step("a general pitch tracker");
const general: {
  readonly takes: number;
  readonly middle: number;
  readonly gross: number;
  readonly other: number;
} = JSON.parse(
  execFileSync(process.execPath, ["--import", "tsx", "tools/sound-baseline.ts", `${FROM}`, `${half}`], {
    encoding: "utf8",
  }),
);

const all = eventsOf([...two, ...four]);
const wrong = (rows: readonly Row[]): number =>
  used(rows).filter((row) => {
    const { errors, gross } = framesOf([row]);
    return gross / errors.length > 0.05;
  }).length;
const report = `# Listening: what was measured

Written by \`npm run sound\`; do not edit. **Everything here is on made sounds** (packages/sound-lab): pulses of every
firing through a pipe, an airbox, echoes, a microphone and a phone, with noises of many kinds. **No real engine has been
measured yet**; the figures say that the reading works and what it cannot do, not how well it does in the field. Seeds
from ${FROM} up were not used while building. Few takes a row: a single bad one shows.

## Speed

Errors are of frames in takes that were not refused, in percent of the true speed; gross is over 15 %, of which an
octave in brackets.

| takes | number | refused | median % | 95th pct % | gross % (octave) | not answered |
| --- | --- | --- | --- | --- | --- | --- |
${speedRow("two-stroke, 10 dB", two)}
${speedRow("four-stroke, 10 dB", four)}
${speedRow("both together", [...two, ...four])}
${speedRow("two-stroke, 0 dB", faint)}
${stress.map(([name, rows]) => speedRow(name, rows)).join("\n")}

At 0 dB nothing is refused for its noise alone, but for not being clear: ${used(faint).length} of ${faint.length} takes were answered, ${wrong(faint)} of those with more than 5 % of frames grossly wrong.

For comparison, a general pitch tracker (McLeod's method, package pitchy, in development only) on ${general.takes} of the same
two-stroke takes: median error ${digits(general.middle, 0)} %, ${digits(general.gross, 0)} % of frames grossly wrong, ${digits(general.other, 0)} % even when octaves are forgiven. Uneven firing
looks to it like a longer period; knowing what an engine can do is what the reading rests on.

## Events, two- and four-stroke at 10 dB

| what | figure |
| --- | --- |
| idle, error median / 90 % | ${digits(100 * share(all.idle, 0.5), 2)} / ${digits(100 * share(all.idle, 0.9), 2)} % |
| hang, error median / 90 % / largest | ${digits(share(all.hang, 0.5), 3)} / ${digits(share(all.hang, 0.9), 3)} / ${digits(share(all.hang, 1), 2)} s |
| dip below idle, error median / 90 % | ${digits(share(all.dive, 0.5), 2)} / ${digits(share(all.dive, 0.9), 2)} percentage points |
| closings missed | ${all.missed} of ${all.chops} |
| snaps missed | ${all.snapsMissed} of ${all.snaps} |
| stalls found | ${all.stallsFound} of ${all.stalls}; false ${all.falseStalls} |
| hunting found | ${all.huntsFound} of ${all.hunts}; false ${all.falseHunts} |

Confidence of events: said against true (idle within 2 %, hang within 0.1 s and dip within 3 points, the rest really there).

${diagram(all.said)}

Confidence of frames: said against within 3 %.

${diagram(framesOf([...two, ...four, ...faint]).said)}

## Refusals

| sound | takes | taken for an engine |
| --- | --- | --- |
${rubbish.map(({ kind, count, accepted }) => `| ${kind} alone | ${count} | ${accepted} |`).join("\n")}
| ridden past at 15 m/s | ${past.length} | ${used(past).length} |
| idle on the card twice too high | ${wrongHint.length} | ${used(wrongHint).length}, wrong ${wrong(wrongHint)} |
| skips every second firing at idle, idle known | ${fullSkip.length} | ${used(fullSkip).length}, wrong ${wrong(fullSkip)} |

Good takes refused: ${percent([...two, ...four].length - used([...two, ...four]).length, two.length + four.length)} (reasons: ${
  Object.entries(
    [...two, ...four]
      .flatMap(({ heard }) => heard?.doubts.map(({ reason }) => reason) ?? [])
      .reduce<Record<string, number>>((sum, reason) => {
        sum[reason] = (sum[reason] ?? 0) + 1;
        return sum;
      }, {}),
  )
    .map(([reason, count]) => `${reason} ${count}`)
    .join(", ") || "none"
}).

## Cost

A 30 s clip at ${clip.rate} samples a second takes ${digits(Math.min(...times), 2)} s of one core at best and ${digits(share(times, 0.5), 2)} s in the middle of seven runs:
${digits(30 / Math.min(...times), 0)} and ${digits(30 / share(times, 0.5), 0)} times real time.
In a process of its own, listening live holds ${digits(memory.stream[0]!, 1)} MB after one minute and ${digits(memory.stream.at(-1)!, 1)} MB after ten (heap in use and
array buffers, the program and the sound fed to it with them). Reading a whole clip of 30 s with its picture made that
process ${digits(memory.grew, 0)} MB larger, to ${digits(memory.resident, 0)} MB in all.

## What is weak

- Speed that changes fast: a four-stroke fires 12 times a second at idle, and what it does between two firings cannot be
  heard; the first moments of a closing among echoes still sound of the speed before. The 95th percentile of four-strokes
  is above the aim of 1.2 % for that.
- A stall is missed where noise that comes up after it is followed as if it were the engine, and wind alone may pass for
  one: the picture shows what a person should not believe.
- Two-strokes that skip half their firings at idle, a loud chain and hum as loud as the engine are mostly refused.
- Confidence of frames was fitted on other seeds; from 0.7 to 0.95 it says some hundredths too much. That of events has
  little to err on in so few takes.
- The speed aim (60 times real time) is not met beside other work; a phone's own speed was not measured. Real codecs
  (AAC, Opus) were not tried: only telephone coding was.
- Skipping under load is seldom told as an event while the intake still breathes every turn.
- Hanging, dive and stall count as evidence with limits from trade practice that no real engine has confirmed.

## The first real test

Five engines, two- and four-stroke; an inductive pick-up on the plug lead, recorded on the second channel, counts every
spark; three phones at 0.5, 1 and 3 m, with and without their own sound processing; ten snaps each. Every limit here is
to be set again from that, on engines kept apart from those that judge it.

## Patents

US 9,922,668 and US 10,283,143 claim ways to estimate fractional chirp rate from several frequency representations. We
stretch time for a set of given slews, as older work on warped transforms does. Somebody with the right training should
read the claims before this is sold; this is no legal advice.
`;
writeFileSync(OUT, report);
console.log(report);
