import { ask } from "./en/ask.ts";
import { bike } from "./en/bike.ts";
import { fitted } from "./en/fitted.ts";
import { home } from "./en/home.ts";
import { newBike } from "./en/new-bike.ts";
import { pictures } from "./en/pictures.ts";
import { report } from "./en/report.ts";
import { settings } from "./en/settings.ts";
import { sheet } from "./en/sheet.ts";
import { step } from "./en/step.ts";
/** Every text of the app, by screen. English is the measure: the other languages must have each entry. */
export const en = { bike, fitted, newBike, settings, step, report, home, pictures, ask, sheet };

export type Words = typeof en;
