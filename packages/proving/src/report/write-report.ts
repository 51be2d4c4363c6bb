import type { Quantile, Share } from "../measure/intervals.ts";
import type { Timed } from "../measure/run-all.ts";
import { bandCover, brier, reliability, type Summary, summarise } from "../measure/summary.ts";
import { MOST_RIDES } from "../policies/policy.ts";
import { barsPlot, coverPlot, linesPlot, squarePlot } from "./plot.ts";

const percent = (share: number, digits = 1): string =>
  Number.isNaN(share) ? "–" : (100 * share).toFixed(digits);
const withRange = ({ share, low, high }: Share, digits = 1): string =>
  Number.isNaN(share)
    ? "–"
    : `${percent(share, digits)} % (${percent(low, digits)} to ${percent(high, digits)})`;
const count = (value: number | null): string => (value === null ? "never" : String(value));
const counted = ({ value, low, high }: Quantile): string =>
  low === value && high === value ? count(value) : `${count(value)} (${count(low)} to ${count(high)})`;

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [head, head.map(() => "---"), ...rows].map((cells) => `| ${cells.join(" | ")} |`).join("\n");

const opening = (at: number): string =>
  ({ 0: "closed", 0.125: "1/8", 0.25: "1/4", 0.5: "1/2", 0.75: "3/4", 1: "full" })[at] ?? String(at);

/** Where the written page takes the figures in. */
export const FROM = "<!-- figures: written by npm run prove -->";
export const TO = "<!-- end of figures -->";

/** The figures of a run as Markdown, and its plots, by file name under docs/. */
export function writeReport(
  policies: readonly string[],
  all: readonly Timed[],
  seconds: number,
): { readonly figures: string; readonly plots: readonly (readonly [string, string])[] } {
  const own = (policy: string): readonly Timed[] => all.filter((each) => each.policy === policy);
  const summaries = policies.map((policy) => summarise(policy, own(policy)));
  const tool = policies.filter((name) => name.startsWith("ours"));
  const parts = [
    `${Math.max(...summaries.map(({ bikes }) => bikes))} bikes (seeds report-0 on), ${seconds.toFixed(0)} s of one core; the tool itself on the first ${own(policies[0]!).length} of them. All on the same seeds; the tool costs some hundred times the minutes of the others to run. In brackets 95 % intervals: Wilson for shares of bikes, whole bikes drawn again for shares of rides, order statistics for quantiles.`,
    "### Rides and minutes to clean",
    ridesTable(summaries),
    "![Share of bikes clean after so many rides](proving/rides.svg)",
    "By rider and by what is wrong, rides to clean as median / 90th percentile / never:",
    byGroup(policies, all),
    "### Lean at the top, and parts bought",
    leanTable(summaries),
    "![Share of rides leaner than 6 % from 3/4 up](proving/lean.svg)",
    "### With a fault, and without",
    faultTable(summaries),
    "Found by the tool, fault by fault (sets; bikes that have it; mended; before a second change of jets):",
    eachFault(own(tool[0]!)),
    "### Honesty",
    "Share of the times that the band held the truth, on bikes with nothing broken:",
    coverTable(own(tool[0]!), false),
    "![Share of the times that the bands held the truth](proving/bands.svg)",
    "On bikes with a fault not yet mended (truth: what the jets alone would do):",
    coverTable(own(tool[0]!), true),
    chancesText(own(tool[0]!)),
    "![Chance of a fault said against how often it was there](proving/faults.svg)",
  ];
  return { figures: parts.join("\n\n"), plots: plots(policies, summaries, own) };
}

const ridesTable = (summaries: readonly Summary[]): string =>
  table(
    [
      "policy",
      "bikes",
      "rides, median",
      "rides, 90th",
      "never clean",
      "clean when it ended",
      "minutes, median",
      "rides made",
    ],
    summaries.map((s) => [
      s.policy,
      String(s.bikes),
      counted(s.median),
      counted(s.ninetieth),
      withRange(s.never),
      withRange(s.cleanAtEnd),
      count(s.medianMinutes.value),
      s.rides.toFixed(1),
    ]),
  );

const leanTable = (summaries: readonly Summary[]): string =>
  table(
    ["policy", "rides leaner than 6 % from 3/4 up", "leanest", "engines lost", "parts bought a bike"],
    summaries.map((s) => [
      s.policy,
      withRange(s.lean, 2),
      `${percent(-s.leanest, 0)} %`,
      withRange(s.lost, 2),
      s.bought.toFixed(2),
    ]),
  );

const faultTable = (summaries: readonly Summary[]): string =>
  table(
    [
      "policy",
      "fault found",
      "found before a second change of jets",
      "rides before, median",
      "looks wasted on a sound bike",
    ],
    summaries.map((s) => [
      s.policy,
      withRange(s.found),
      withRange(s.foundInTime),
      count(s.ridesBeforeFound.value),
      s.wasted.toFixed(1),
    ]),
  );

function byGroup(policies: readonly string[], all: readonly Timed[]): string {
  const groups: readonly (readonly [string, (each: Timed) => boolean])[] = [
    ["good rider", ({ rider }) => rider === "good"],
    ["typical", ({ rider }) => rider === "typical"],
    ["novice", ({ rider }) => rider === "novice"],
    ["nothing broken", ({ fault }) => fault === null],
    ["nothing broken, good rider", ({ fault, rider }) => fault === null && rider === "good"],
    ["a fault", ({ fault }) => fault !== null],
    ["two-stroke", ({ strokes }) => strokes === 2],
    ["four-stroke", ({ strokes }) => strokes === 4],
  ];
  return table(
    ["policy", ...groups.map(([name]) => name)],
    policies.map((policy) => [
      policy,
      ...groups.map(([, holds]) => {
        const s = summarise(
          policy,
          all.filter((each) => each.policy === policy && holds(each)),
        );
        return `${count(s.median.value)} / ${count(s.ninetieth.value)} / ${percent(s.never.share, 0)} %`;
      }),
    ]),
  );
}

function eachFault(outcomes: readonly Timed[]): string {
  const faults = [...new Set(outcomes.flatMap(({ fault }) => (fault === null ? [] : [fault])))].sort();
  return table(
    ["fault", "bikes", "found", "in time"],
    faults.map((fault) => {
      const s = summarise(
        "",
        outcomes.filter((each) => each.fault === fault),
      );
      return [
        fault,
        String(s.bikes),
        `${percent(s.found.share, 0)} %`,
        `${percent(s.foundInTime.share, 0)} %`,
      ];
    }),
  );
}

const coverTable = (outcomes: readonly Timed[], broken: boolean): string =>
  table(
    ["", "50 % band", "90 % band", "bias, in its own spread", "spread, %"],
    bandCover(outcomes, broken).map(({ at, half, ninety, bias, spread }) => [
      opening(at),
      withRange(half),
      withRange(ninety),
      bias.toFixed(2),
      percent(spread),
    ]),
  );

function chancesText(outcomes: readonly Timed[]): string {
  const sound = outcomes.flatMap(({ notes }) => notes.sound);
  const share = sound.filter(({ there }) => there).length / sound.length;
  const unsure = outcomes.flatMap(({ notes }) => notes.unsure);
  const said = unsure.filter((each) => each.said);
  const right = said.filter((each) => each.wrong).length / said.length;
  const otherwise = unsure.filter((each) => !each.said);
  const otherwiseWrong = otherwise.filter((each) => each.wrong).length / otherwise.length;
  return [
    `Chance that nothing is broken: Brier score ${brier(sound).toFixed(3)}, where always saying the true share (${percent(share, 0)} %) gives ${(share * (1 - share)).toFixed(3)}.`,
    `It said that it could not tell (asked for a test, a reading of the parts or another report, or was not sure) in ${percent(said.length / unsure.length, 0)} % of its steps. In ${percent(right, 0)} % of those its best change would have done harm or a fault was there: it was right to hold back. When it did not say so, the same was true in ${percent(otherwiseWrong, 0)} %.`,
  ].join(" ");
}

function plots(
  policies: readonly string[],
  summaries: readonly Summary[],
  own: (policy: string) => readonly Timed[],
): readonly (readonly [string, string])[] {
  const reached = policies.map((policy) => {
    const outcomes = own(policy);
    const values = Array.from(
      { length: MOST_RIDES + 1 },
      (_, rides) =>
        outcomes.filter(({ ridesToClean }) => ridesToClean !== null && ridesToClean <= rides).length /
        outcomes.length,
    );
    return { name: policy, values };
  });
  const tool = own(policies[0]!);
  return [
    ["rides.svg", linesPlot("Bikes clean after so many rides", reached, "rides, the owner's own included")],
    [
      "lean.svg",
      barsPlot(
        "Rides leaner than 6 % from 3/4 up",
        summaries.map(({ policy, lean }) => ({
          name: policy,
          value: lean.share,
          low: lean.low,
          high: lean.high,
        })),
        (value) => `${percent(value)} %`,
      ),
    ],
    [
      "bands.svg",
      coverPlot(
        "How often the bands held the truth, nothing broken",
        bandCover(tool, false).map(({ at, half, ninety }) => ({
          name: opening(at),
          half: half.share,
          ninety: ninety.share,
        })),
      ),
    ],
    [
      "faults.svg",
      squarePlot(
        "Faults named: said against true",
        reliability(tool.flatMap(({ notes }) => notes.faults)).map(({ said, true: t }) => ({
          x: said,
          y: t.share,
          low: t.low,
          high: t.high,
        })),
        "chance said; upwards how often it was there",
      ),
    ],
  ];
}

/** The page with its figures replaced. Throws RangeError when the page has lost its marks. */
export function withFigures(page: string, figures: string): string {
  const from = page.indexOf(FROM);
  const to = page.indexOf(TO);
  if (from < 0 || to < from) throw new RangeError(`The page must hold "${FROM}" and "${TO}" in this order`);
  return `${page.slice(0, from + FROM.length)}\n\n${figures}\n\n${page.slice(to)}`;
}
