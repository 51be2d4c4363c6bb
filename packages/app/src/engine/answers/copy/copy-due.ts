/** Days and records after which a copy is old. */
const OLD_DAYS = 14;
const OLD_RECORDS = 50;
const DAY = 86_400_000;

/** What is written here and in no copy. */
export interface Uncopied {
  readonly since: number;
  /** When the first of it was written, milliseconds since 1970; null when there is none. */
  readonly firstAt: number | null;
}

/** Whether a copy is due: work not copied for more than 14 days, or more than 50 records of it. */
export const copyDue = ({ since, firstAt }: Uncopied, now: number): boolean =>
  since > OLD_RECORDS || (firstAt !== null && now - firstAt > OLD_DAYS * DAY);
