import { formatInstant, parseInstant } from "../instant.ts";

/** Day of the month and UTC time, as a weather report carries them. */
interface ReportTime {
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Minutes a phone's clock may be behind the station's. */
const CLOCK_SLACK = 15;
const two = (n: number): string => String(n).padStart(2, "0");

/**
 * Minutes from the report to an instant, taking the last such day of a month up to then; null when the report
 * carries no time or no month of the last twelve has that day.
 * @param at milliseconds since 1970
 */
export function reportAgeMinutes(time: ReportTime | null, at: number): number | null {
  if (time === null) return null;
  const text = formatInstant(at);
  let year = Number(text.slice(0, 4));
  let month = Number(text.slice(5, 7));
  for (let back = 0; back < 12; back++) {
    const made = parseInstant(
      `${String(year).padStart(4, "0")}-${two(month)}-${two(time.day)}T${two(time.hour)}:${two(time.minute)}Z`,
    );
    if (made.ok && made.value <= at + CLOCK_SLACK * 60_000) return Math.floor((at - made.value) / 60_000);
    month = month === 1 ? 12 : month - 1;
    if (month === 12) year--;
  }
  return null;
}
