import type { Entry } from "@jetwright/records";

const WITH_YEAR = new Intl.DateTimeFormat("en-GB", {
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});

const MINUTE = 60_000;

/** Minutes east of UTC that a record was written at; 0 for UTC or where it does not say. */
function offsetOf(entry: Entry): number {
  const { at } = entry.source;
  const match = typeof at === "string" ? /([+-])(\d{2}):?(\d{2})?$/.exec(at) : null;
  if (match === null) return 0;
  return (match[1] === "-" ? -1 : 1) * (Number(match[2]) * 60 + Number(match[3] ?? 0));
}

/** The day a record happened, by the clock of the place it was written at: "3 Apr 2026". */
export const dayOf = (entry: Entry): string =>
  WITH_YEAR.format(new Date(entry.at + offsetOf(entry) * MINUTE));
