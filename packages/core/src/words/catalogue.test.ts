import { describe, expect, test } from "vitest";
import { CAUTIONS } from "../advice/cautions.ts";
import { CHECKS } from "../advice/checks.ts";
import { TESTS } from "../advice/tests-on-engine.ts";
import { FAULTS } from "../belief/catalogue.ts";
import { SIGN_SECTIONS, SIGNS } from "../belief/signs/all.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import type { CoreWords } from "./core-words.ts";
import { german } from "./de.ts";
import { english } from "./en.ts";
import { spanish } from "./es.ts";
import { signWords } from "./sign-words.ts";
import { spokenSamples, textsOf } from "./test-catalogue.ts";
import { WARNINGS } from "./test-warnings.ts";
import { warningText } from "./warning.ts";

const LANGUAGES: readonly CoreWords[] = [english, german, spanish];

describe.each(LANGUAGES.map((words) => [words.language, words] as const))("the words in %s", (_, words) => {
  test("are never empty and never left open", () => {
    for (const [path, text] of textsOf(words)) {
      expect(text.trim(), path).not.toBe("");
      expect(text, path).toBe(text.trim());
      expect(text, path).not.toMatch(/undefined|NaN|null|\[object|TODO| {2}/);
    }
  });

  test("name every sign, section, fault, check, test, outcome and caution, and no other", () => {
    const sorted = (ids: readonly string[]) => [...ids].sort();
    expect(sorted(Object.keys(words.signs))).toEqual(sorted(SIGNS.map(({ id }) => id)));
    expect(sorted(Object.keys(words.signSections))).toEqual(sorted(SIGN_SECTIONS.map(({ id }) => id)));
    expect(sorted(Object.keys(words.faults))).toEqual(sorted(FAULTS));
    expect(sorted(Object.keys(words.checks))).toEqual(sorted(CHECKS.map(({ id }) => id)));
    expect(sorted(Object.keys(words.cautions))).toEqual(sorted(CAUTIONS.map(({ id }) => id)));
    expect(sorted(Object.keys(words.tests))).toEqual(sorted(TESTS.map(({ id }) => id)));
    for (const { id, outcomes } of TESTS)
      expect(sorted(Object.keys(words.tests[id].outcomes))).toEqual(sorted(outcomes.map((one) => one.id)));
  });

  test("keep as many steps and tools as the English ones", () => {
    const counts = (said: CoreWords) => [
      ...CHECKS.map(({ id }) => [id, said.checks[id].steps.length, said.checks[id].tools.length]),
      ...TESTS.map(({ id }) => [id, said.tests[id].steps.length, said.tests[id].tools.length]),
    ];
    expect(counts(words)).toEqual(counts(english));
  });

  test("of the signs an engine can show differ from one another", () => {
    for (const strokes of ["two", "four"] as const) {
      const named = SIGNS.filter((sign) => sign.strokes === strokes || sign.strokes === "both").map(
        ({ id }) => words.signs[id].words,
      );
      expect(new Set(named).size).toBe(named.length);
    }
    for (const { id } of TESTS) {
      const outcomes = Object.values(words.tests[id].outcomes);
      expect(new Set(outcomes).size, id).toBe(outcomes.length);
    }
  });

  test("say what they are given", () => {
    for (const { said, given } of spokenSamples(words)) {
      expect(said.trim()).toBe(said);
      for (const each of given) expect(said).toContain(each);
    }
  });

  test("tell the openings apart, alone and in a sentence", () => {
    for (const say of [words.openings.at, words.openings.name])
      expect(new Set(SPOKEN_OPENINGS.map(say)).size).toBe(SPOKEN_OPENINGS.length);
    const [closed, , quarter, , , full] = SPOKEN_OPENINGS;
    expect(words.openings.atEach([quarter!])).toContain("1/4");
    const both = words.openings.atEach([closed!, quarter!, full!]);
    expect(both).not.toBe(words.openings.atEach([quarter!, full!]));
    expect(both).not.toBe(words.openings.atEach([closed!, quarter!]));
  });

  test("tell every way of a change apart", () => {
    const move = (from: number, to: number) =>
      words.parts.change([{ from: { part: "clip", groove: from }, to: { part: "clip", groove: to } }]);
    expect(move(3, 2).replace(/[23]/g, "")).not.toBe(move(2, 3).replace(/[23]/g, ""));
    const stand = { part: "screw", kind: "air", turns: 1.5 } as const;
    expect(words.steps.change.how.screw("air", stand)).not.toBe(words.steps.change.how.screw("fuel", stand));
    const [leaner, richer] = (["leaner", "richer"] as const).map((way) =>
      words.steps.change.expect(way, 4, SPOKEN_OPENINGS[2]!, "x"),
    );
    expect(leaner).not.toBe(richer);
    expect(
      new Set(
        (["free", "seconds only", "stay below 3/4"] as const).map((top) => words.steps.ride.how(top).join()),
      ).size,
    ).toBe(3);
    expect(
      new Set(
        (["better", "same", "worse"] as const).map((felt) => words.reasons.felt(felt, SPOKEN_OPENINGS[0]!)),
      ).size,
    ).toBe(3);
  });

  test("say that a part is not known", () => {
    const unknown = [
      words.parts.value({ part: "main", number: null }),
      words.parts.value({ part: "clip", groove: null }),
      words.parts.value({ part: "needle", marks: null, groove: 3 }),
      words.parts.value({ part: "slide", cutawayMm: null }),
      words.parts.value({ part: "screw", kind: "air", turns: null }),
      words.parts.value({ part: "needleJet", boreMm: null }),
      words.steps.change.jet(null),
    ];
    for (const said of unknown) expect(said).toMatch(/^[^\d]+$/);
  });
});

/** The figures and names a message gives, as they may be found in its sentence. */
const namedIn = (given: unknown, words: CoreWords): readonly string[] =>
  typeof given === "number"
    ? [words.figure(Math.abs(given))]
    : typeof given === "string"
      ? [given]
      : typeof given === "object" && given !== null
        ? Object.values(given).flatMap((each) => namedIn(each, words))
        : [];
/** Words of the programs and not of a person: they are said in another way. */
const CODES = [
  ...["relative", "dew-point", "wet-bulb", "carried dew-point", "dry wet-bulb"],
  ...["hundredths of inHg", "main", "pilot", "closed", "full", "zorn"],
];

describe.each(LANGUAGES.map((words) => [words.language, words] as const))("warnings in %s", (_, words) => {
  test("say every figure and name given, each way differently", () => {
    const said = WARNINGS.map((warning) => warningText(warning, words));
    expect(new Set(said).size).toBe(WARNINGS.length);
    for (const [i, warning] of WARNINGS.entries()) {
      const given =
        "given" in warning && warning.code !== "stand-in parts" ? namedIn(warning.given, words) : [];
      for (const each of given.filter((one) => !CODES.includes(one)))
        expect(said[i], warning.code).toContain(each);
      expect(said[i]).not.toMatch(/undefined|NaN|null|\[object| {2}/);
    }
    const named = Object.entries(words.warnings).flatMap(([code, one]) =>
      typeof one === "string" ? [] : [code],
    );
    expect([...new Set(WARNINGS.map(({ code }) => code))].sort()).toEqual(named.sort());
  });
});

/** English words that no other language here has. */
const ENGLISH = /\b(the|and|with|of|is|throttle|jet|screw|needle|revs|idle|plug|pipe|fuel|when|after)\b/i;

describe.each(
  LANGUAGES.filter((words) => words !== english).map((words) => [words.language, words] as const),
)("the words in %s", (_, words) => {
  test("are nowhere left in English", () => {
    const inEnglish = new Map(textsOf(english));
    for (const [path, text] of textsOf(words)) {
      expect(text, path).not.toMatch(ENGLISH);
      if (/[a-z]{4}/.test(text) && text !== "Multimeter") expect(text, path).not.toBe(inEnglish.get(path));
    }
    for (const { said } of spokenSamples(words)) expect(said).not.toMatch(ENGLISH);
    for (const warning of WARNINGS) expect(warningText(warning, words)).not.toMatch(ENGLISH);
  });

  test("write a broken figure with a comma", () => {
    expect(words.parts.value({ part: "slide", cutawayMm: 3.5 })).toContain("3,5");
    expect(words.parts.value({ part: "clip", groove: 2.5 })).toContain("2,5");
    for (const [path, text] of textsOf(words)) expect(text, path).not.toMatch(/\d\.\d/);
    for (const warning of WARNINGS) expect(warningText(warning, words)).not.toMatch(/\d\.\d/);
  });
});

test("a sign without words is a bug", () => {
  expect(signWords(english, "will-not-idle")).toBe(english.signs["will-not-idle"]);
  expect(() => signWords(english, "sings")).toThrow(/"sings"/);
});
