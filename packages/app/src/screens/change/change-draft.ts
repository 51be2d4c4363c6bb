import type { HowKnown, LabourPart } from "@jetwright/core";
import type { JsonObject } from "@jetwright/records";
import type { ChangePart, ChangePlan } from "../../engine/answers/change/change-plan.ts";
import type { PartTyped } from "../fitted/read-part.ts";
import type { Seen } from "../fitted/seen.ts";

export type How = Exclude<HowKnown, "unknown">;

/** What came out of one part: as the log says, something else, or nobody looked. */
export interface Came {
  readonly is: "as-written" | "other" | "not-looked";
  readonly typed: PartTyped;
  readonly how: How;
}

/** A change while it is being carried out; kept so that a locked phone loses nothing. */
export interface ChangeDraft {
  readonly plan: ChangePlan;
  readonly chosen: readonly LabourPart[];
  readonly page: string;
  readonly ticked: readonly string[];
  readonly came: Readonly<Partial<Record<LabourPart, Came>>>;
  /** What went in, as typed; left out: as proposed. */
  readonly went: Readonly<Partial<Record<LabourPart, PartTyped>>>;
  /** Taken from the drawer; left out: yes where it lies there. */
  readonly taken: Readonly<Partial<Record<LabourPart, boolean>>>;
  /** What came off went into the drawer; left out: yes where it is known what it is. */
  readonly kept: Readonly<Partial<Record<LabourPart, boolean>>>;
  readonly photos: readonly DraftPhoto[];
  /** What the carburetor is, where nobody had said so. */
  readonly seen: Seen;
}

/** A picture taken during a change. */
export interface DraftPhoto {
  readonly hash: string;
  /** Left out in drafts of an earlier version, which say it in words. */
  readonly part?: LabourPart;
  readonly of?: string;
  /** It shows what goes in; left out: what came out. */
  readonly goesIn?: boolean;
  /** When it was taken, milliseconds since 1970. */
  readonly at?: number;
}

/** Side the screw sits on, as described or as seen now; null when nobody looked. */
export const screwSide = ({ plan, seen }: ChangeDraft): "air" | "fuel" | null =>
  plan.screw ?? seen.screw ?? null;

export const newDraft = (plan: ChangePlan): ChangeDraft => ({
  plan,
  chosen: plan.advised,
  page: plan.advised.length === 0 ? "choose" : "ready",
  ticked: [],
  came: {},
  went: {},
  taken: {},
  kept: {},
  photos: [],
  seen: {},
});

/** Parts reached by the cap and by the bowl; a screw needs neither. */
const BOWL: readonly LabourPart[] = ["main", "pilot", "needleJet"];
const CAP: readonly LabourPart[] = ["needle", "clip", "slide"];

export const opensBowl = ({ chosen }: ChangeDraft): boolean => chosen.some((part) => BOWL.includes(part));
export const opensCap = ({ chosen }: ChangeDraft): boolean => chosen.some((part) => CAP.includes(part));
export const opensBody = (draft: ChangeDraft): boolean => opensBowl(draft) || opensCap(draft);

/** The pages in order. With only the screw turned nothing was open, so nothing is put together. */
export function pagesOf(draft: ChangeDraft): readonly string[] {
  const parts = draft.plan.parts.map(({ part }) => part).filter((part) => draft.chosen.includes(part));
  return [
    ...(draft.plan.advised.length === 0 ? ["choose"] : []),
    "ready",
    ...parts.map((part) => `part:${part}`),
    ...(opensBody(draft) ? ["together", "start"] : []),
  ];
}

/** Ids of what is ticked before the work, in order. */
export function readyTicks(draft: ChangeDraft): readonly string[] {
  if (!opensBody(draft)) return ["outdoors", "warm"];
  return [
    "fuel-off",
    "cool",
    "no-sparks",
    ...(opensBowl(draft) ? ["tray"] : []),
    "battery-off",
    "washed",
    "screw-counted",
  ];
}

/** Ids of what is ticked when it goes back together, in order. */
export function togetherTicks(draft: ChangeDraft): readonly string[] {
  return [
    ...(opensCap(draft) ? ["clip-seated", "slide-way"] : []),
    ...(opensBowl(draft) ? ["jets-tight", "bowl-ring"] : []),
    "screw-back",
    "hoses",
    "clamps",
    "filter",
    "cable",
    "choke",
    "battery-on",
    "no-drip",
  ];
}

/** The slide-snap check: engine off, at three places of the bars. */
export const SNAP_TICKS = ["snap-left", "snap-straight", "snap-right"] as const;
/** The card on a runaway engine was opened. */
export const RUNAWAY_READ = "runaway-read";

/** Ids not yet ticked on a page. */
export function stillOpen(draft: ChangeDraft, page: string): readonly string[] {
  const wanted =
    page === "ready"
      ? readyTicks(draft)
      : page === "together"
        ? togetherTicks(draft)
        : page === "start"
          ? [...SNAP_TICKS, RUNAWAY_READ]
          : [];
  return wanted.filter((id) => !draft.ticked.includes(id));
}

/** True when nothing was done in it yet. */
export const isUntouched = ({ page, ticked, came, went }: ChangeDraft): boolean =>
  (page === "ready" || page === "choose") &&
  ticked.length === 0 &&
  Object.keys(came).length + Object.keys(went).length === 0;

/** The same work: same advice and, where the person chose, either. */
export const isSameWork = (draft: ChangeDraft, plan: ChangePlan): boolean =>
  draft.plan.title === plan.title && draft.plan.record === plan.record;

/** A draft as stored; null for anything that is none. */
export function readChangeDraft(stored: unknown): ChangeDraft | null {
  if (typeof stored !== "object" || stored === null) return null;
  const draft = stored as Partial<ChangeDraft>;
  const { plan } = draft;
  const lists = [draft.chosen, draft.ticked, draft.photos, plan?.parts, plan?.advised, plan?.drawer];
  const objects: readonly unknown[] = [draft.came, draft.went, draft.taken];
  if (!lists.every(Array.isArray) || typeof draft.page !== "string") return null;
  if (!objects.every((one) => typeof one === "object" && one !== null)) return null;
  // Drafts begun by an older version say nothing of the drawer or of what was seen.
  const read = { ...draft, kept: draft.kept ?? {}, seen: draft.seen ?? {} } as ChangeDraft;
  return pagesOf(read).includes(read.page) ? read : null;
}

/** The part's place in the plan. */
export function planned({ plan }: ChangeDraft, name: LabourPart): ChangePart {
  const part = plan.parts.find((one) => one.part === name);
  if (part === undefined) throw new RangeError(`"${name}" is no part that is changed`);
  return part;
}

/** What goes in of a needle decides which grooves the clip can sit in. */
export function groovesAfter(draft: ChangeDraft): number | null {
  if (!draft.chosen.includes("needle")) return draft.plan.grooves;
  const typed = Number(draft.went.needle?.grooves);
  if (Number.isInteger(typed) && typed > 0) return typed;
  const told = (planned(draft, "needle").proposed as JsonObject | null)?.grooves;
  return typeof told === "number" ? told : null;
}
