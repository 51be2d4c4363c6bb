import {
  accept,
  type CoreWords,
  type KnownSign,
  OPENINGS,
  type Outcome,
  openingName,
  refuse,
  SIGN_SECTIONS,
  type Sign,
  type SignSectionId,
  shiftBetween,
  signById,
} from "@jetwright/core";
import { bikeCase, type ReplayedCase } from "@jetwright/records";
import {
  ASKED_OPENINGS,
  REPORT_OPENINGS,
  type ReportOpening,
  signChoices,
} from "../../screens/report/sign-choices.ts";
import type { EngineState } from "../state.ts";
import { type PartCompared, partRows } from "./part-rows.ts";

/** A sign as a person taps it. */
export interface SignOffered {
  readonly id: string;
  readonly words: string;
  readonly description: string;
  readonly notToBeTakenFor: string;
  readonly when: string;
  readonly healthy: boolean;
  /** It ends the ride and the tuning. */
  readonly stop: boolean;
}

export interface RideForm {
  readonly name: string;
  readonly openings: Readonly<Record<ReportOpening, readonly SignOffered[]>>;
  /** Signs of the whole ride by section, without those asked at an opening. */
  readonly more: readonly { readonly words: string; readonly signs: readonly SignOffered[] }[];
  /** Ids of the signs that speak for health. */
  readonly healthy: readonly string[];
  /** What was changed since the last ride; null when nothing was, or there was none. */
  readonly against: ChangedSince | null;
}

export interface ChangedSince {
  readonly parts: readonly PartCompared[];
  /** Where the change can be felt at all. */
  readonly openings: readonly ReportOpening[];
}

/** Section of signs that only a test shows: those are reported on the test's own card. */
const SHOWN_BY_A_TEST: SignSectionId = "engine-tests";
/** A change of the mixture smaller than this nobody feels: 1 %. Estimate. */
const FELT_FROM = 0.01;

/** What a ride report on this bike asks. */
export function rideForm(
  { shop, words }: EngineState,
  { bike }: { readonly bike: string },
): Outcome<RideForm, "no-such-bike"> {
  const story = shop.bikes.get(bike);
  if (story === undefined)
    return refuse(
      "no-such-bike",
      `No record of this shop is about a bike "${bike}". Choose one from the list.`,
    );
  const strokes = story.description?.engine?.strokes ?? null;
  const at = (opening: ReportOpening) => signChoices(opening, strokes).map((id) => offeredById(id, words));
  const openings = {
    closed: at("closed"),
    "1/8": at("1/8"),
    "1/4": at("1/4"),
    "1/2": at("1/2"),
    "3/4": at("3/4"),
    full: at("full"),
  };
  const asked = new Set(REPORT_OPENINGS.flatMap((opening) => openings[opening].map(({ id }) => id)));
  const fits = ({ strokes: of }: Sign) =>
    of === "both" || strokes === null || of === (strokes === 2 ? "two" : "four");
  const more = SIGN_SECTIONS.filter(({ id }) => id !== SHOWN_BY_A_TEST)
    .map(({ id, signs }) => ({
      words: words.signSections[id],
      signs: signs.filter((sign) => fits(sign) && !asked.has(sign.id)).map((sign) => offered(sign, words)),
    }))
    .filter(({ signs }) => signs.length > 0);
  const made = bikeCase(shop, bike);
  return accept({
    name: story.description?.name ?? bike,
    openings,
    more,
    healthy: SIGN_SECTIONS.flatMap(({ signs }) => signs.flatMap(({ id, healthy }) => (healthy ? [id] : []))),
    against: made.ok ? changedSince(made.value, words) : null,
  });
}

const offered = ({ id, healthy, stop }: KnownSign, { signs }: CoreWords): SignOffered => ({
  id,
  notToBeTakenFor: "",
  ...signs[id],
  healthy,
  stop,
});

function offeredById(id: string, words: CoreWords): SignOffered {
  const sign = signById(id);
  if (sign === undefined) throw new RangeError(`Sign "${id}" is not in the catalogue`);
  return offered(sign, words);
}

function changedSince({ rides, now }: ReplayedCase, words: CoreWords): ChangedSince | null {
  const last = rides.at(-1)?.situation;
  if (last === undefined || last.setup === now.setup) return null;
  const after = partRows(now.setup, words);
  const changed = partRows(last.setup, words)
    .map((from, i) => ({ from, to: after[i]! }))
    .filter(
      ({ from: { part } }) => JSON.stringify(last.setup[part].part) !== JSON.stringify(now.setup[part].part),
    );
  if (changed.length === 0) return null;
  const shift = shiftBetween(last, { ...last, setup: now.setup });
  const felt = (opening: ReportOpening): boolean => {
    if (!shift.ok) return ASKED_OPENINGS.includes(opening);
    const at = OPENINGS.findIndex((each) => openingName(each) === opening);
    const total = Object.values(shift.value).reduce((sum, circuit) => sum + circuit[at]!, 0);
    return Math.abs(total) >= FELT_FROM;
  };
  const openings = REPORT_OPENINGS.filter(felt);
  return {
    parts: changed.map(({ from, to }) => ({ part: from.part, from: from.value, to: to.value })),
    openings: openings.length > 0 ? openings : ASKED_OPENINGS,
  };
}
