import type { Advice, MixtureReading } from "@jetwright/core";
import { openingName } from "@jetwright/core";

/** ln ratio to percent, as people say it: 0.05 is 5.1 % rich. */
export const percentOf = (error: number): number => 100 * (Math.exp(error) - 1);

export type Verdict = "rich" | "lean" | "seems rich" | "seems lean" | "right" | "open";

/** Spreads from the mean that leave three chances in four on one side. */
const THREE_IN_FOUR = 0.674;
/** Spreads either side of the mean that hold three chances in four. */
const BOTH_SIDES = 1.15;
/** Spreads from zero that make a direction worth saying. */
const SEEMS = 0.5;
/** A mixture error, ln, nobody feels; and one that is right for a technician. */
const FELT = 0.02;
const RIGHT = 0.06;

/** What can be said of one opening: rich, lean or right only where three chances in four stand behind it. */
export function verdictOn({ mean, sd }: Pick<MixtureReading, "mean" | "sd">): Verdict {
  if (mean - THREE_IN_FOUR * sd > FELT) return "rich";
  if (mean + THREE_IN_FOUR * sd < -FELT) return "lean";
  if (Math.abs(mean) + BOTH_SIDES * sd < RIGHT) return "right";
  if (mean > FELT && mean > SEEMS * sd) return "seems rich";
  return mean < -FELT && mean < -SEEMS * sd ? "seems lean" : "open";
}

interface Run {
  readonly verdict: Verdict;
  readonly readings: readonly MixtureReading[];
}

function runsOf(picture: readonly MixtureReading[]): Run[] {
  const runs: Run[] = [];
  for (const reading of picture) {
    const verdict = verdictOn(reading);
    const last = runs.at(-1);
    if (last?.verdict === verdict) runs[runs.length - 1] = { verdict, readings: [...last.readings, reading] };
    else runs.push({ verdict, readings: [reading] });
  }
  return runs;
}

const atOpening = (name: string): string =>
  name === "closed" ? "with the throttle closed" : name === "full" ? "at full throttle" : `at ${name}`;

function stretch({ readings }: Run): string {
  const first = openingName(readings[0]!.opening);
  const last = openingName(readings.at(-1)!.opening);
  return first === last ? atOpening(first) : `from ${first} to ${last}`;
}

const largest = ({ readings }: Run): number =>
  Math.max(...readings.map(({ mean }) => Math.abs(percentOf(mean))));

const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What the mixture does over the throttle, in a few plain sentences: what is known, what seems so, what is open. */
export function mixtureSentences({ picture }: Pick<Advice, "picture">): string {
  const runs = runsOf(picture);
  const being = (...verdicts: Verdict[]): Run[] => runs.filter(({ verdict }) => verdicts.includes(verdict));
  const [off, right, open] = [being("rich", "lean"), being("right"), being("open")];
  const seeming = being("seems rich", "seems lean");
  if (open.length === runs.length)
    return "Nothing is sure yet, at any opening: it may be rich, lean or right.";
  const sentences: string[] = [];
  const places = (some: readonly Run[]): string => listed(some.map(stretch));
  if (off.length > 0) {
    const also = right.length > 0 ? `, and right ${places(right)}` : "";
    sentences.push(`It runs ${listed(off.map(withSize))}${also}.`);
  } else if (right.length > 0) {
    sentences.push(
      right.length === runs.length ? "It runs right at every opening." : `It runs right ${places(right)}.`,
    );
  }
  if (seeming.length > 0) sentences.push(`It seems ${listed(seeming.map(withSize))}, but that is not sure.`);
  if (open.length > 0) sentences.push(`Nothing can be told yet ${places(open)}.`);
  return sentences.join(" ");
}

const withSize = (run: Run): string =>
  `${run.verdict.replace("seems ", "")} ${stretch(run)} by about ${Math.max(1, Math.round(largest(run)))} %`;

/** Openings that read as two things at once, each in one sentence. */
export const twoSidedSentences = ({ twoSided }: Pick<Advice, "twoSided">): string[] =>
  twoSided.map(({ opening, rich, richPeak, leanPeak }) => {
    const where = upperFirst(
      atOpening(openingName(opening)).replace("with the throttle closed", "at closed throttle"),
    );
    const size = (peak: number): string => `${Math.max(1, Math.round(Math.abs(percentOf(peak))))} %`;
    return `${where} it reads as too rich or too lean, not in between: about ${size(richPeak)} rich (${inTen(rich)}) or ${size(leanPeak)} lean (${inTen(1 - rich)}).`;
  });

const TENTHS = [
  "hardly any",
  "1 in ten",
  "2 in ten",
  "3 in ten",
  "4 in ten",
  "even",
  "6 in ten",
  "7 in ten",
  "8 in ten",
  "9 in ten",
  "almost sure",
];

/** A chance in the words of the trade: "7 in ten". */
export const inTen = (chance: number): string => TENTHS[Math.max(0, Math.min(10, Math.round(chance * 10)))]!;
