import {
  accept,
  CHECKS,
  FAULT_CATALOGUE,
  faultsTold,
  type Outcome,
  openingName,
  refuse,
  SIGN_SECTIONS,
  TESTS,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { closestWords } from "@jetwright/records";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import type { Io } from "../io.ts";
import { openingJson } from "../output/shapes.ts";
import type { SignsOutput } from "../output/signs-output.ts";
import { hanging, wrap } from "../print/layout.ts";

const MANUAL = `
The names a log uses: signs by how they sound, smoke and feel, and the checks, tests
and faults. A word finds those that speak of it.

  jetwright signs              all signs, one line each
  jetwright signs bog          what "bog" may be, and how to tell the look-alikes apart
  jetwright signs hang smoke   both words
  jetwright signs --tests      tests on the running engine, with their outcomes
  jetwright signs --checks     looks and measurements, with what they find
  jetwright signs --faults     the faults a check can find

A ride report carries the name of a sign:

  {"sign": "hangs-after-closing", "opening": "closed"}
  {"sign": "dives-below-idle", "seen": false}     looked for, and not there
`;

// The catalogue as people read it: figures and words together.
const CHECKS_SAID = CHECKS.map((check) => ({ ...english.checks[check.id], ...check }));
const TESTS_SAID = TESTS.map((test) => ({
  ...english.tests[test.id],
  ...test,
  outcomes: Object.entries(english.tests[test.id].outcomes).map(([id, words]) => ({ id, words })),
}));
const FAULTS_SAID = FAULT_CATALOGUE.map((fault) => ({
  ...english.faults[fault.id],
  ...faultsTold[fault.id],
  ...fault,
}));
const SECTIONS_SAID = SIGN_SECTIONS.map(({ id, signs: all }) => ({
  section: english.signSections[id],
  signs: all.map((sign) => ({ notToBeTakenFor: "", ...english.signs[sign.id], ...sign })),
}));
type CheckSaid = (typeof CHECKS_SAID)[number];
type TestSaid = (typeof TESTS_SAID)[number];
type FaultSaid = (typeof FAULTS_SAID)[number];
type SignSaid = (typeof SECTIONS_SAID)[number]["signs"][number];

export const signs: Command = {
  name: "signs",
  summary: "find the name of what you heard, felt, tested or checked",
  usage: ["jetwright signs [WORD ...]", "jetwright signs --checks | --tests | --faults [WORD ...]"],
  manual: MANUAL,
  flags: {
    checks: { type: "switch", help: "Checks in place of signs" },
    tests: { type: "switch", help: "Tests in place of signs" },
    faults: { type: "switch", help: "Faults in place of signs" },
  },
  operands: [0, 20],
  run,
};

/** How a list of the catalogue is searched and printed. */
interface Listing {
  readonly lines: readonly string[];
  readonly found: Omit<SignsOutput, "command" | "v">;
  readonly count: number;
}

async function run(args: Arguments, _io: Io, { width }: Look): Promise<Outcome<Answer>> {
  const lists = ["checks", "tests", "faults"].filter((flag) => args.on(flag));
  if (lists.length > 1) return refuse("arguments", `Ask for one list at a time: --${lists.join(" or --")}.`);
  const words = args.operands.map((word) => word.toLowerCase());
  const listing = list(lists[0], words, width);
  if (listing.count === 0) return refuse("no-such-word", nothingFor(args.operands));
  const json: SignsOutput = { command: "signs", v: 1, ...listing.found };
  return accept({ json, text: listing.lines.join("\n"), problems: [] });
}

function list(which: string | undefined, words: readonly string[], width: number): Listing {
  const says = (...texts: readonly string[]): boolean => {
    const all = texts.join(" ").toLowerCase();
    return words.every((word) => all.includes(word));
  };
  const full = words.length > 0;
  switch (which) {
    case "checks": {
      const found = CHECKS_SAID.filter((one) =>
        says(one.id, one.words, one.mend, ...one.steps, ...Object.keys(one.finds)),
      );
      return {
        count: found.length,
        found: { checks: found.map(checkJson) },
        lines: found.flatMap((one) => checkLines(one, full, width)),
      };
    }
    case "tests": {
      const found = TESTS_SAID.filter((one) =>
        says(one.id, one.words, ...one.steps, ...one.outcomes.map((each) => each.words)),
      );
      return {
        count: found.length,
        found: { tests: found.map(testJson) },
        lines: found.flatMap((one) => testLines(one, full, width)),
      };
    }
    case "faults": {
      const found = FAULTS_SAID.filter((one) => says(one.id, one.words, one.does, one.touches));
      return {
        count: found.length,
        found: { faults: found.map(faultJson) },
        lines: found.flatMap((one) => faultLines(one, width)),
      };
    }
    default: {
      const sections = SECTIONS_SAID.map(({ section, signs: all }) => ({
        section,
        signs: all.filter((one) => says(one.id, one.words, one.description, one.notToBeTakenFor)),
      })).filter(({ signs: all }) => all.length > 0);
      return {
        count: sections.length,
        found: {
          signs: sections.flatMap(({ section, signs: all }) => all.map((one) => signJson(one, section))),
        },
        lines: sections.flatMap(({ section, signs: all }) => [
          section,
          ...all.flatMap((one) => (full ? signLines(one, width) : entry(one.id, one.words, width))),
          "",
        ]),
      };
    }
  }
}

function nothingFor(words: readonly string[]): string {
  const ids = SIGN_SECTIONS.flatMap(({ signs: all }) => all.map(({ id }) => id));
  const near = closestWords(words.join("-"), ids);
  const hint =
    near.length > 0
      ? `Near it: ${near.join(", ")}.`
      : "Try one plain word, such as bog, hang, smoke or idle.";
  return `Nothing here speaks of "${words.join(" ")}". ${hint}`;
}

const COLUMN = 38;

/** An id with its words beside it. */
const entry = (id: string, words: string, width: number): string[] =>
  `  ${id}`.length < COLUMN - 1
    ? hanging(`  ${id}`.padEnd(COLUMN), words, width)
    : [`  ${id}`, ...hanging(" ".repeat(COLUMN), words, width)];

const under = (text: string, width: number): string[] => (text === "" ? [] : hanging("      ", text, width));

const FOR = { two: "Two-strokes only. ", four: "Four-strokes only. ", both: "" } as const;

const signLines = (one: SignSaid, width: number): string[] => [
  `  ${one.id}`,
  ...hanging("    ", `${one.words}.`, width),
  ...under(one.description, width),
  ...under(one.notToBeTakenFor === "" ? "" : `Not to be taken for: ${one.notToBeTakenFor}`, width),
  ...under(
    `${FOR[one.strokes]}${one.stop ? "Stop: no more riding or tuning. " : ""}${one.warmOnly ? "Counts on a warm engine only. " : ""}Speaks of: ${one.speaksOf.map(([opening]) => openingName(opening)).join(", ")}.`,
    width,
  ),
  "",
];

const checkLines = (one: CheckSaid, full: boolean, width: number): string[] => [
  ...entry(one.id, `${one.words} (${one.minutes} minutes)`, width),
  ...(full ? one.steps.flatMap((step, i) => hanging(`      ${i + 1}. `, step, width)) : []),
  ...(full ? under(`Finds: ${Object.keys(one.finds).join(", ")}. Then: ${one.mend}`, width) : []),
  ...(full ? [""] : []),
];

const testLines = (one: TestSaid, full: boolean, width: number): string[] => [
  ...entry(one.id, `${FOR[one.strokes]}${one.words} (${one.minutes} minutes)`, width),
  ...(full ? one.steps.flatMap((step, i) => hanging(`      ${i + 1}. `, step, width)) : []),
  ...one.outcomes.flatMap((outcome) => hanging(`      ${outcome.id}: `, outcome.words, width)),
  "",
];

const faultLines = (one: FaultSaid, width: number): string[] => [
  ...entry(one.id, one.words, width),
  ...under(one.does, width),
  ...wrap("", width),
];

const signJson = (one: SignSaid, section: string) => ({
  id: one.id,
  section,
  words: one.words,
  description: one.description,
  notToBeTakenFor: one.notToBeTakenFor,
  when: one.when,
  speaksOf: one.speaksOf.map(([opening]) => openingJson(opening)),
  strokes: one.strokes,
  warmOnly: one.warmOnly,
  stop: one.stop,
});

const checkJson = (one: CheckSaid) => ({
  id: one.id,
  words: one.words,
  minutes: one.minutes,
  steps: [...one.steps],
  tools: [...one.tools],
  finds: Object.keys(one.finds),
  mend: one.mend,
  strokes: one.strokes,
});

const testJson = (one: TestSaid) => ({
  id: one.id,
  words: one.words,
  minutes: one.minutes,
  openings: one.openings.map(openingJson),
  steps: [...one.steps],
  tools: [...one.tools],
  outcomes: one.outcomes.map(({ id, words }) => ({ id, words })),
  strokes: one.strokes,
});

const faultJson = ({ id, words, does, touches }: FaultSaid) => ({ id, words, does, touches });
