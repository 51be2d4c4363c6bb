import { type Felt, NEW_DRAFT, type Noticed, type Page, type ReportDraft } from "./draft.ts";
import { CHOKE_ANSWERS, type ChokeAnswer, REPORT_OPENINGS, type ReportOpening } from "./sign-choices.ts";

const FELT: readonly unknown[] = ["better", "same", "worse"] satisfies readonly Felt[];

/**
 * A draft as this or another version of the app stored it. Whatever it holds that is not understood is passed
 * over; the rest stays.
 */
export function readDraft(stored: unknown): ReportDraft {
  if (!isObject(stored)) return NEW_DRAFT;
  const { page, warm, noticed, unsure, choke, felt, more, words, record } = stored;
  return {
    page: isPage(page) ? page : NEW_DRAFT.page,
    warm: typeof warm === "boolean" ? warm : NEW_DRAFT.warm,
    noticed: atOpenings(noticed, (signs) => (isObject(signs) ? readNoticed(signs) : null)),
    unsure: Array.isArray(unsure) ? REPORT_OPENINGS.filter((opening) => unsure.includes(opening)) : [],
    choke: isChoke(choke) ? choke : null,
    felt: atOpenings(felt, (verdict) => (FELT.includes(verdict) ? (verdict as Felt) : null)),
    more: isObject(more) ? readNoticed(more) : {},
    words: typeof words === "string" ? words : "",
    record: typeof record === "string" ? record : null,
  };
}

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const isPage = (value: unknown): value is Page =>
  value === "rest" || (REPORT_OPENINGS as readonly unknown[]).includes(value);

const isChoke = (value: unknown): value is ChokeAnswer =>
  typeof value === "string" && Object.hasOwn(CHOKE_ANSWERS, value);

const readNoticed = (signs: Record<string, unknown>): Noticed =>
  Object.fromEntries(
    Object.entries(signs).filter((entry): entry is [string, boolean] => typeof entry[1] === "boolean"),
  );

function atOpenings<Value>(
  stored: unknown,
  read: (value: unknown) => Value | null,
): Partial<Record<ReportOpening, Value>> {
  if (!isObject(stored)) return {};
  return Object.fromEntries(
    REPORT_OPENINGS.flatMap((opening) => {
      const value = Object.hasOwn(stored, opening) ? read(stored[opening]) : null;
      return value === null ? [] : [[opening, value]];
    }),
  );
}
