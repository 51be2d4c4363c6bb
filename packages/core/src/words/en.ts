import type { CoreWords } from "./core-words.ts";
import { cautions } from "./en/cautions.ts";
import { checks } from "./en/checks.ts";
import { faults } from "./en/faults.ts";
import { openings } from "./en/openings.ts";
import { parts } from "./en/parts.ts";
import { reasons } from "./en/reasons.ts";
import { signSections } from "./en/sign-sections.ts";
import { closingTheThrottle } from "./en/signs/closing.ts";
import { engineTests } from "./en/signs/engine-tests.ts";
import { openingTheThrottle } from "./en/signs/opening.ts";
import { partThrottle } from "./en/signs/part-throttle.ts";
import { partsSeen } from "./en/signs/parts-seen.ts";
import { smokeAndConsumption } from "./en/signs/smoke-and-consumption.ts";
import { startingAndIdle } from "./en/signs/starting-and-idle.ts";
import { temperatureAndSmell } from "./en/signs/temperature-and-smell.ts";
import { wideOpen } from "./en/signs/wide-open.ts";
import { steps } from "./en/steps.ts";
import { stretches } from "./en/stretches.ts";
import { tests } from "./en/tests.ts";
import { warnings } from "./en/warnings.ts";
import { withPoint } from "./figures.ts";

/** Everything the core says, in English: the measure of the other languages. */
export const english: CoreWords = {
  language: "en",
  figure: withPoint,
  openings,
  signSections,
  signs: {
    ...startingAndIdle,
    ...closingTheThrottle,
    ...openingTheThrottle,
    ...partThrottle,
    ...wideOpen,
    ...temperatureAndSmell,
    ...partsSeen,
    ...smokeAndConsumption,
    ...engineTests,
  },
  faults,
  checks,
  tests,
  cautions,
  parts,
  stretches,
  reasons,
  refusals: {},
  steps,
  warnings,
};
