import { accept, type Outcome, refuse } from "@jetwright/core";

export type InstantReason = "not-a-time" | "no-zone" | "no-such-date" | "no-such-time";

const SHAPE =
  /^(\d{4})-(\d{2})-(\d{2})(?:[Tt ](\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(?:([Zz])|([+-])(\d{2}):?(\d{2})?)?)?$/;
const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const EXAMPLE = "Write it like 2026-05-02T10:15:00+02:00, or with Z at the end for UTC.";

/** Years that stay within four digits whatever the zone. */
const [EARLIEST, LATEST] = [2, 9998];

export const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

function daysInMonth(year: number, month: number): number {
  return month === 2 && isLeapYear(year) ? 29 : (MONTH_DAYS[month - 1] ?? 0);
}

/** Days from 1970-01-01 to a date of the Gregorian calendar, for any year from 1 on. */
function dayNumber(year: number, month: number, day: number): number {
  const before = year - 1;
  let days =
    before * 365 + Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) - 719_162;
  for (let m = 1; m < month; m++) days += daysInMonth(year, m);
  return days + day - 1;
}

/**
 * Milliseconds since 1970-01-01T00:00Z of an ISO 8601 date and time with its zone. Years 2 to 9998; parts of
 * a second beyond the millisecond are cut off. Leap seconds (":60") are refused, as nobody rides in one.
 * A missing zone is refused and not guessed: two phones in two countries share one log.
 */
export function parseInstant(text: string): Outcome<number, InstantReason> {
  const match = SHAPE.exec(text);
  if (!match) return refuse("not-a-time", `"${text.slice(0, 40)}" is not a date and time. ${EXAMPLE}`);
  const [, y, mo, d, h, mi, s = "0", fraction = "", utc, sign, zoneHour = "0", zoneMinute = "0"] = match;
  const [year, month, day] = [Number(y), Number(mo), Number(d)];
  if (
    year < EARLIEST ||
    year > LATEST ||
    month < 1 ||
    month > 12 ||
    day < 1 ||
    day > daysInMonth(year, month)
  ) {
    return refuse("no-such-date", `There is no ${y}-${mo}-${d} in the calendar. ${EXAMPLE}`);
  }
  if (h === undefined) return refuse("not-a-time", `"${text}" has no time of day. ${EXAMPLE}`);
  if (utc === undefined && sign === undefined) {
    return refuse("no-zone", `"${text}" does not say its time zone. ${EXAMPLE}`);
  }
  const [hour, minute, second] = [Number(h), Number(mi), Number(s)];
  if (hour > 23 || minute > 59 || second > 59 || Number(zoneHour) > 23 || Number(zoneMinute) > 59) {
    return refuse("no-such-time", `"${text}" is not a time a clock can show. ${EXAMPLE}`);
  }
  const offset = (sign === "-" ? -1 : 1) * (Number(zoneHour) * 60 + Number(zoneMinute));
  const seconds = (dayNumber(year, month, day) * 24 + hour) * 3600 + (minute - offset) * 60 + second;
  return accept(seconds * 1000 + Number(fraction.slice(0, 3).padEnd(3, "0")));
}

const two = (n: number): string => String(n).padStart(2, "0");

/**
 * The instant as ISO 8601 text, in UTC or at an offset in minutes east of it.
 * @param milliseconds since 1970, whole, within the years 1 to 9999
 */
export function formatInstant(milliseconds: number, offsetMinutes = 0): string {
  if (
    !Number.isInteger(milliseconds) ||
    !Number.isInteger(offsetMinutes) ||
    Math.abs(offsetMinutes) >= 1440
  ) {
    throw new RangeError(`Not whole milliseconds and minutes: ${milliseconds}, ${offsetMinutes}`);
  }
  const local = milliseconds + offsetMinutes * 60_000;
  const days = Math.floor(local / 86_400_000);
  let year = 1970 + Math.floor(days / 365.2425);
  while (dayNumber(year, 1, 1) > days) year--;
  while (dayNumber(year + 1, 1, 1) <= days) year++;
  if (year < 1 || year > 9999) throw new RangeError(`Year ${year} is outside 1 to 9999`);
  let rest = days - dayNumber(year, 1, 1);
  let month = 1;
  while (rest >= daysInMonth(year, month)) rest -= daysInMonth(year, month++);
  const ofDay = local - days * 86_400_000;
  const clock = [
    two(Math.floor(ofDay / 3_600_000)),
    two(Math.floor(ofDay / 60_000) % 60),
    two(Math.floor(ofDay / 1000) % 60),
  ].join(":");
  const thousandths = ofDay % 1000 === 0 ? "" : `.${String(ofDay % 1000).padStart(3, "0")}`;
  const off = Math.abs(offsetMinutes);
  const zone =
    offsetMinutes === 0
      ? "Z"
      : `${offsetMinutes < 0 ? "-" : "+"}${two(Math.floor(off / 60))}:${two(off % 60)}`;
  return `${String(year).padStart(4, "0")}-${two(month)}-${two(rest + 1)}T${clock}${thousandths}${zone}`;
}
