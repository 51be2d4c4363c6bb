import type { CoreWords } from "./core-words.ts";
import { cautions } from "./de/cautions.ts";
import { checks } from "./de/checks.ts";
import { faults } from "./de/faults.ts";
import { openings } from "./de/openings.ts";
import { parts } from "./de/parts.ts";
import { reasons } from "./de/reasons.ts";
import { refusals } from "./de/refusals.ts";
import { signSections } from "./de/sign-sections.ts";
import { closingTheThrottle } from "./de/signs/closing.ts";
import { engineTests } from "./de/signs/engine-tests.ts";
import { openingTheThrottle } from "./de/signs/opening.ts";
import { partThrottle } from "./de/signs/part-throttle.ts";
import { partsSeen } from "./de/signs/parts-seen.ts";
import { smokeAndConsumption } from "./de/signs/smoke-and-consumption.ts";
import { startingAndIdle } from "./de/signs/starting-and-idle.ts";
import { temperatureAndSmell } from "./de/signs/temperature-and-smell.ts";
import { wideOpen } from "./de/signs/wide-open.ts";
import { steps } from "./de/steps.ts";
import { stretches } from "./de/stretches.ts";
import { tests } from "./de/tests.ts";
import { warnings } from "./de/warnings.ts";
import { withComma } from "./figures.ts";

/** Everything the core says, in German. Not yet checked by a native speaker who works on engines. */
export const german: CoreWords = {
  language: "de",
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
