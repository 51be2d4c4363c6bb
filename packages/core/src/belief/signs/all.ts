import type { Sign } from "../catalogue.ts";
import { closingTheThrottle } from "./closing.ts";
import { engineTests } from "./engine-tests.ts";
import { openingTheThrottle } from "./opening.ts";
import { partThrottle } from "./part-throttle.ts";
import { partsSeen } from "./parts-seen.ts";
import { smokeAndConsumption } from "./smoke-and-consumption.ts";
import { startingAndIdle } from "./starting-and-idle.ts";
import { temperatureAndSmell } from "./temperature-and-smell.ts";
import { wideOpen } from "./wide-open.ts";

/** The sign catalogue by section, in the order a form asks. */
export const SIGN_SECTIONS: readonly { readonly words: string; readonly signs: readonly Sign[] }[] = [
  { words: "Starting and idle", signs: startingAndIdle },
  { words: "Closing the throttle", signs: closingTheThrottle },
  { words: "Opening the throttle", signs: openingTheThrottle },
  { words: "Part throttle", signs: partThrottle },
  { words: "Full throttle", signs: wideOpen },
  { words: "Heat, smell and fuel", signs: temperatureAndSmell },
  { words: "Plug and piston", signs: partsSeen },
  { words: "Smoke, oil and fuel used", signs: smokeAndConsumption },
  { words: "Shown by a test", signs: engineTests },
];

/** Every sign known, section by section. */
export const SIGNS: readonly Sign[] = SIGN_SECTIONS.flatMap((section) => section.signs);

const byId = new Map(SIGNS.map((sign) => [sign.id, sign]));

/** The sign of that id, or undefined for a name the catalogue does not know. */
export function signById(id: string): Sign | undefined {
  return byId.get(id);
}
