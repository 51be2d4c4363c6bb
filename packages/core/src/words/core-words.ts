import type { cautions } from "./en/cautions.ts";
import type { checks } from "./en/checks.ts";
import type { faults } from "./en/faults.ts";
import type { openings } from "./en/openings.ts";
import type { parts } from "./en/parts.ts";
import type { reasons } from "./en/reasons.ts";
import type { signSections } from "./en/sign-sections.ts";
import type { closingTheThrottle } from "./en/signs/closing.ts";
import type { engineTests } from "./en/signs/engine-tests.ts";
import type { openingTheThrottle } from "./en/signs/opening.ts";
import type { partThrottle } from "./en/signs/part-throttle.ts";
import type { partsSeen } from "./en/signs/parts-seen.ts";
import type { smokeAndConsumption } from "./en/signs/smoke-and-consumption.ts";
import type { startingAndIdle } from "./en/signs/starting-and-idle.ts";
import type { temperatureAndSmell } from "./en/signs/temperature-and-smell.ts";
import type { wideOpen } from "./en/signs/wide-open.ts";
import type { steps } from "./en/steps.ts";
import type { stretches } from "./en/stretches.ts";
import type { tests } from "./en/tests.ts";
import type { warnings } from "./en/warnings.ts";
import type { CheckWords, FaultWords, SignWords, TestWords } from "./entry.ts";
import type { Figure } from "./figures.ts";

// How to add a language, or to change a text.
//
// Everything the core says stands in one catalogue per language. English (words/en.ts with words/en/*.ts) is the
// measure: its keys and its functions' arguments are the type, so a language that lacks one does not compile. A language
// xx is words/xx.ts, which exports one CoreWords, composed of words/xx/*.ts: a file for each file of words/en, each typed
// by its topic, such as
//
//   export const steps: CoreWords["steps"] = { ... };            // words/de/steps.ts
//   export const wideOpen: SignTexts<"wide-open"> = { ... };      // words/de/signs/wide-open.ts
//
// and is reached by a door of the package, "@jetwright/core/words/xx" (exports in package.json), so that a page loads the
// language in use and no other. Ids, openings' names as records write them ("closed", "1/4", "full") and units stay as
// they are. Functions get bare figures and parts (part-stand.ts), and give back whole phrases: order, case and gender are
// the language's own. Numbers go through `figure` (figures.ts: withPoint, withComma, turnsText).

/** Signs by section, as English has them. */
export interface SignSections {
  readonly "starting-and-idle": typeof startingAndIdle;
  readonly closing: typeof closingTheThrottle;
  readonly opening: typeof openingTheThrottle;
  readonly "part-throttle": typeof partThrottle;
  readonly "wide-open": typeof wideOpen;
  readonly "temperature-and-smell": typeof temperatureAndSmell;
  readonly "parts-seen": typeof partsSeen;
  readonly "smoke-and-consumption": typeof smokeAndConsumption;
  readonly "engine-tests": typeof engineTests;
}
export type SignSectionId = keyof SignSections;

/** The signs of one section in words. */
export type SignTexts<Section extends SignSectionId> = Readonly<
  Record<keyof SignSections[Section], SignWords>
>;

export type SignId = { [Section in SignSectionId]: keyof SignSections[Section] }[SignSectionId];
export type FaultWordsId = keyof typeof faults;
export type CheckId = keyof typeof checks;
export type TestId = keyof typeof tests;
export type CautionId = keyof typeof cautions;

type TestTexts = {
  readonly [Id in TestId]: TestWords & {
    readonly outcomes: Readonly<Record<keyof (typeof tests)[Id]["outcomes"], string>>;
  };
};

/** Everything the core says, in one language. */
export interface CoreWords {
  /** As in a `lang` attribute. */
  readonly language: "en" | "de" | "es";
  readonly figure: Figure;
  readonly openings: typeof openings;
  readonly signSections: Readonly<Record<keyof typeof signSections, string>>;
  readonly signs: Readonly<Record<SignId, SignWords>>;
  readonly faults: Readonly<Record<FaultWordsId, FaultWords>>;
  readonly checks: Readonly<Record<CheckId, CheckWords>>;
  readonly tests: TestTexts;
  readonly cautions: Readonly<Record<CautionId, string>>;
  readonly parts: typeof parts;
  readonly stretches: typeof stretches;
  readonly reasons: typeof reasons;
  /** Why something was refused, by the reason; where a reason is missing here, its own English (`refusalText`) is said. */
  readonly refusals: Readonly<Record<string, string>>;
  readonly steps: typeof steps;
  readonly warnings: typeof warnings;
}
