/** Words that open a report or a forecast. */
const OPENERS = new Set(["METAR", "SPECI", "TAF"]);
/** Four-letter words of reports that a time may follow without being a station. */
const NOT_STATIONS = new Set(["AUTO", "NEXT", "LAST", "FROM", "TILL", "WIND", "NOSIG"]);
/** No group of a report is longer; longer words are passed over. */
const LONGEST_GROUP = 24;

/** A four-letter place indicator. */
export const isStation = (word: string): boolean =>
  /^[A-Z][A-Z0-9]{3}$/.test(word) && !NOT_STATIONS.has(word);

/** Day, hour and minute in UTC, such as 121755Z. */
export const isTime = (word: string): boolean => /^\d{6}Z$/.test(word);

/**
 * Cuts pasted text into reports, each a list of upper-case groups. A report ends at "=", at the next METAR,
 * SPECI or TAF, or where a further station and time begin. Linear in the length of the text.
 */
export function splitReports(text: string): readonly (readonly string[])[] {
  const words = text
    .toUpperCase()
    .replaceAll("=", " = ")
    .replaceAll("$", " ")
    .replaceAll("\u2212", "-")
    .split(/\s+/)
    .map((word) => word.replace(/^[,;]|[,;.]$/g, ""))
    .filter((word) => word.length > 0 && word.length <= LONGEST_GROUP);
  const reports: string[][] = [];
  let current: string[] = [];
  let timed = false;
  const close = (): void => {
    if (current.length > 0) reports.push(current);
    current = [];
    timed = false;
  };
  for (const [i, word] of words.entries()) {
    if (word === "=") {
      close();
      continue;
    }
    const stationAgain = timed && isStation(word) && isTime(words[i + 1] ?? "");
    if (OPENERS.has(word) || stationAgain) close();
    if (isTime(word)) timed = true;
    current.push(word);
  }
  close();
  return reports;
}
