import type { JsonObject } from "@jetwright/records";
import {
  ASKED_OPENINGS,
  CHOKE_ANSWERS,
  type ChokeAnswer,
  REPORT_OPENINGS,
  type ReportOpening,
} from "./sign-choices.ts";

export type Felt = "better" | "same" | "worse";
/** True: it did this. False: looked for and not there. */
export type Noticed = Readonly<Record<string, boolean>>;
/** Where the report stands: at an opening, or at the questions after them. */
export type Page = ReportOpening | "rest";

/** A ride report while it is being tapped together. */
export interface ReportDraft {
  readonly page: Page;
  readonly warm: boolean;
  readonly noticed: Readonly<Partial<Record<ReportOpening, Noticed>>>;
  /** Openings at which the person could not tell. */
  readonly unsure: readonly ReportOpening[];
  readonly choke: ChokeAnswer | null;
  readonly felt: Readonly<Partial<Record<ReportOpening, Felt>>>;
  /** Signs of the whole ride, at no opening of their own. */
  readonly more: Noticed;
  readonly words: string;
  /** The record it was last made ready as; when that is in the log, this draft has been kept. */
  readonly record: string | null;
}

export const NEW_DRAFT: ReportDraft = {
  page: "closed",
  warm: true,
  noticed: {},
  unsure: [],
  choke: null,
  felt: {},
  more: {},
  words: "",
  record: null,
};

/** What was looked at, at one opening: nothing is an empty answer. */
export const noticedAt = (draft: ReportDraft, opening: ReportOpening): Noticed =>
  draft.noticed[opening] ?? {};

/** Marks a sign at an opening as there or as not there; the same tap again takes the mark away. */
export function markSign(
  draft: ReportDraft,
  opening: ReportOpening,
  sign: string,
  seen: boolean,
): ReportDraft {
  return {
    ...draft,
    noticed: { ...draft.noticed, [opening]: marked(noticedAt(draft, opening), sign, seen) },
    unsure: draft.unsure.filter((other) => other !== opening),
  };
}

/** The same for a sign of the whole ride. */
export const markMore = (draft: ReportDraft, sign: string, seen: boolean): ReportDraft => ({
  ...draft,
  more: marked(draft.more, sign, seen),
});

function marked(noticed: Noticed, sign: string, seen: boolean): Noticed {
  const { [sign]: before, ...others } = noticed;
  return before === seen ? others : { ...others, [sign]: seen };
}

/** Could not tell at that opening: nothing is recorded there. */
export function markUnsure(draft: ReportDraft, opening: ReportOpening): ReportDraft {
  const { [opening]: _gone, ...noticed } = draft.noticed;
  const already = draft.unsure.includes(opening);
  const others = draft.unsure.filter((other) => other !== opening);
  return { ...draft, noticed, unsure: already ? others : [...others, opening] };
}

/** The signs that were there at an opening. */
export const seenAt = (draft: ReportDraft, opening: ReportOpening): readonly string[] =>
  Object.entries(noticedAt(draft, opening)).flatMap(([sign, seen]) => (seen ? [sign] : []));

export const isAnswered = (draft: ReportDraft, opening: ReportOpening): boolean =>
  draft.unsure.includes(opening) || Object.keys(noticedAt(draft, opening)).length > 0;

/** The page after this one; three quarters is passed over unless it is asked for. */
export function pageAfter(page: Page): Page {
  if (page === "rest") return "rest";
  const later = REPORT_OPENINGS.slice(REPORT_OPENINGS.indexOf(page) + 1);
  return later.find((opening) => ASKED_OPENINGS.includes(opening)) ?? "rest";
}

/** The page before this one; null before the first. */
export function pageBefore(page: Page): Page | null {
  const earlier = page === "rest" ? REPORT_OPENINGS : REPORT_OPENINGS.slice(0, REPORT_OPENINGS.indexOf(page));
  return earlier.findLast((opening) => ASKED_OPENINGS.includes(opening)) ?? null;
}

/** Nothing in it that a record could say. */
export function isEmpty(draft: ReportDraft): boolean {
  const { reports, against, words } = reportBody(draft, []);
  return reports === undefined && against === undefined && words === undefined;
}

/** Where the touch of choke was tried: the smallest opening at half or below that showed trouble; null when none did. */
export function troubleAt(draft: ReportDraft, healthy: readonly string[]): ReportOpening | null {
  const upToHalf = REPORT_OPENINGS.slice(0, REPORT_OPENINGS.indexOf("1/2") + 1);
  return upToHalf.find((opening) => seenAt(draft, opening).some((sign) => !healthy.includes(sign))) ?? null;
}

/** Of these openings, those that can be compared: not where the person could not tell, nor three quarters unasked. */
export const comparable = (
  draft: ReportDraft,
  openings: readonly ReportOpening[],
): readonly ReportOpening[] =>
  openings.filter(
    (opening) =>
      !draft.unsure.includes(opening) && (ASKED_OPENINGS.includes(opening) || isAnswered(draft, opening)),
  );

/** The body of the record; what nobody said is left out. */
export function reportBody(draft: ReportDraft, healthy: readonly string[]): JsonObject {
  const reports: JsonObject[] = REPORT_OPENINGS.flatMap((opening) =>
    Object.entries(noticedAt(draft, opening)).map(([sign, seen]) => ({ sign, opening, seen })),
  );
  if (draft.choke !== null) {
    const at = troubleAt(draft, healthy);
    const opening = at === null ? {} : { opening: at };
    reports.push({ sign: CHOKE_ANSWERS[draft.choke], ...opening, seen: true });
  }
  for (const [sign, seen] of Object.entries(draft.more)) reports.push({ sign, seen });
  const felt = comparable(draft, REPORT_OPENINGS).flatMap((opening) => {
    const verdict = draft.felt[opening];
    return verdict === undefined ? [] : [{ opening, felt: verdict }];
  });
  const words = draft.words.trim();
  return {
    warm: draft.warm,
    ...(reports.length > 0 ? { reports } : {}),
    ...(felt.length > 0 ? { against: { felt } } : {}),
    ...(words !== "" ? { words } : {}),
  };
}
