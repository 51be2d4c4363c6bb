import type { Preferences } from "./preferences.ts";

const HALF_YEAR = 182 * 24 * 3_600_000;

/** A day in the person's language: "13 Jun"; with the year when it is more than half a year from now. */
export function dayText(at: number, { language }: Pick<Preferences, "language">, now = Date.now()): string {
  const far = Math.abs(now - at) > HALF_YEAR;
  return new Intl.DateTimeFormat(language === "en" ? "en-GB" : language, {
    day: "numeric",
    month: "short",
    ...(far && { year: "numeric" }),
  }).format(at);
}
