import type { CoreWords } from "./core-words.ts";
import { cautions } from "./es/cautions.ts";
import { checks } from "./es/checks.ts";
import { faults } from "./es/faults.ts";
import { openings } from "./es/openings.ts";
import { parts } from "./es/parts.ts";
import { reasons } from "./es/reasons.ts";
import { refusals } from "./es/refusals.ts";
import { signSections } from "./es/sign-sections.ts";
import { closingTheThrottle } from "./es/signs/closing.ts";
import { engineTests } from "./es/signs/engine-tests.ts";
import { openingTheThrottle } from "./es/signs/opening.ts";
import { partThrottle } from "./es/signs/part-throttle.ts";
import { partsSeen } from "./es/signs/parts-seen.ts";
import { smokeAndConsumption } from "./es/signs/smoke-and-consumption.ts";
import { startingAndIdle } from "./es/signs/starting-and-idle.ts";
import { temperatureAndSmell } from "./es/signs/temperature-and-smell.ts";
import { wideOpen } from "./es/signs/wide-open.ts";
import { steps } from "./es/steps.ts";
import { stretches } from "./es/stretches.ts";
import { tests } from "./es/tests.ts";
import { warnings } from "./es/warnings.ts";
import { withComma } from "./figures.ts";

/** Everything the core says, in Spanish. Not yet checked by a native speaker who works on engines. */
export const spanish: CoreWords = {
  language: "es",
  figure: withComma,
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
  refusals,
  steps,
  warnings,
};
