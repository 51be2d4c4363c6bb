import type { SignSectionId } from "../../words/core-words.ts";
import { closingTheThrottle } from "./closing.ts";
import { engineTests } from "./engine-tests.ts";
import { openingTheThrottle } from "./opening.ts";
import { partThrottle } from "./part-throttle.ts";
import { partsSeen } from "./parts-seen.ts";
import type { KnownSign } from "./row.ts";
import { smokeAndConsumption } from "./smoke-and-consumption.ts";
import { startingAndIdle } from "./starting-and-idle.ts";
import { temperatureAndSmell } from "./temperature-and-smell.ts";
import { wideOpen } from "./wide-open.ts";

/** Signs that a form asks together. */
export interface SignSection {
  readonly id: SignSectionId;
  readonly signs: readonly KnownSign[];
}

/** The sign catalogue by section, in the order a form asks. */
export const SIGN_SECTIONS: readonly SignSection[] = [
  { id: "starting-and-idle", signs: startingAndIdle },
  { id: "closing", signs: closingTheThrottle },
  { id: "opening", signs: openingTheThrottle },
  { id: "part-throttle", signs: partThrottle },
  { id: "wide-open", signs: wideOpen },
  { id: "temperature-and-smell", signs: temperatureAndSmell },
  { id: "parts-seen", signs: partsSeen },
  { id: "smoke-and-consumption", signs: smokeAndConsumption },
  { id: "engine-tests", signs: engineTests },
];

/** Every sign known, section by section. */
export const SIGNS: readonly KnownSign[] = SIGN_SECTIONS.flatMap((section) => section.signs);

const byId = new Map<string, KnownSign>(SIGNS.map((sign) => [sign.id, sign]));

/** The sign of that id, or undefined for a name the catalogue does not know. */
export function signById(id: string): KnownSign | undefined {
  return byId.get(id);
}
