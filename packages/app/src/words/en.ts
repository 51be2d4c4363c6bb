import { home } from "./en/home.ts";
import { pictures } from "./en/pictures.ts";
import { report } from "./en/report.ts";

/** Every text of the app, by screen. English is the measure: the other languages must have each entry. */
export const en = { report, home, pictures };

export type Words = typeof en;
