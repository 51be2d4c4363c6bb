import { home } from "./en/home.ts";

/** Every text of the app, by screen. English is the measure: the other languages must have each entry. */
export const en = { home };

export type Words = typeof en;
