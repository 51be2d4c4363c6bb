import { accept, type Outcome, type Refusal, refuse } from "../units/outcome.ts";
import type { Warning } from "../words/warning.ts";
import type { ReportGroups } from "./report-groups.ts";

export type ChoiceRefusal = "not-a-report" | "forecast" | "nil" | "no-reading";

/** One of the reports in a text. */
export interface Candidate {
  readonly groups: ReportGroups;
  readonly text: string;
}

const hasPressure = ({ q, a, qfe }: ReportGroups): boolean =>
  [q, a, qfe].some((group) => group !== null && group.pressure !== null);

const hasTemperature = ({ whole, tenths }: ReportGroups): boolean => whole !== null || tenths !== null;

/** A bare "10/03" may be a date: something else must show that the text is a report. */
const isObservation = (groups: ReportGroups): boolean =>
  !groups.forecast && (groups.kind !== null || groups.time !== null || hasPressure(groups));

const hasReading = (groups: ReportGroups): boolean =>
  !groups.nil && (hasPressure(groups) || hasTemperature(groups));

function nothingToRead(all: readonly Candidate[], reports: readonly Candidate[]): Refusal<ChoiceRefusal> {
  if (reports.some(({ groups }) => groups.nil)) {
    return refuse(
      "nil",
      "The report says NIL: the station sent no observation. Take another, or type the readings.",
    );
  }
  if (reports.length > 0) {
    return refuse(
      "no-reading",
      "The report holds neither a temperature nor a pressure that can be read: type the readings.",
    );
  }
  if (all.some(({ groups }) => groups.forecast)) {
    return refuse("forecast", "This is a forecast (TAF): paste the observation, METAR or SPECI.");
  }
  return refuse(
    "not-a-report",
    "No weather report found in the text: paste a METAR or SPECI, or type the readings.",
  );
}

/** Minutes into the month, carried over a month's end; -1 without a time. */
function ranks(reports: readonly Candidate[]): readonly number[] {
  const days = reports.flatMap(({ groups }) => (groups.time === null ? [] : [groups.time.day]));
  const acrossMonths = Math.max(...days) - Math.min(...days) > 15;
  return reports.map(({ groups: { time } }) => {
    if (time === null) return -1;
    const day = acrossMonths && time.day <= 15 ? time.day + 31 : time.day;
    return (day * 24 + time.hour) * 60 + time.minute;
  });
}

function newest(reports: readonly Candidate[]): Candidate | null {
  const rank = ranks(reports);
  let best: number | null = null;
  reports.forEach((report, i) => {
    if (best === null || rank[i]! > rank[best]!) best = i;
    else if (rank[i] === rank[best] && (report.groups.corrected || !reports[best]!.groups.corrected))
      best = i;
  });
  return best === null ? null : reports[best]!;
}

function notChosen(
  all: readonly Candidate[],
  reports: readonly Candidate[],
  readable: readonly Candidate[],
  best: Candidate,
): readonly Warning[] {
  const warnings: Warning[] = [];
  if (readable.length > 1) {
    const stations = [...new Set(readable.map(({ groups }) => groups.station))].slice(0, 5);
    warnings.push({
      code: "several-reports",
      given: { count: readable.length, used: best.text.slice(0, 40), stations },
    });
  }
  if (reports.some(({ groups }) => groups.nil)) {
    warnings.push({ code: "nil-passed-over" });
  }
  if (all.some(({ groups }) => groups.forecast)) {
    warnings.push({ code: "forecast-passed-over" });
  }
  return warnings;
}

/**
 * The report to use among those found in a text: of those with a reading the newest by day and time, a
 * correction before what it corrects, the later in the text before the earlier; days more than 15 apart are
 * taken to lie across a month's end. The warnings say what was passed over.
 */
export function chooseReport(
  all: readonly Candidate[],
): Outcome<{ readonly report: Candidate; readonly warnings: readonly Warning[] }, ChoiceRefusal> {
  const reports = all.filter(({ groups }) => isObservation(groups));
  const readable = reports.filter(({ groups }) => hasReading(groups));
  const report = newest(readable);
  if (report === null) return nothingToRead(all, reports);
  return accept({ report, warnings: notChosen(all, reports, readable, report) });
}
