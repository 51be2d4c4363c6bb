import {
  accept,
  type Jet,
  type Known,
  type LabourPart,
  type Outcome,
  type Setup,
  toMillimetre,
} from "@jetwright/core";
import { bikeCase, type DrawerPart, type FittedParts, type JsonObject } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { adviceIn } from "../advice.ts";

/** The parts that are changed, in the order the carburetor gives them up: screw, cap, bowl. */
export const CHANGED_PARTS = [
  "screw",
  "needle",
  "clip",
  "slide",
  "main",
  "pilot",
  "needleJet",
] as const satisfies readonly LabourPart[];

export interface ChangePart {
  readonly part: LabourPart;
  /** How it is done here, from the advice; null when the person chose the part freely. */
  readonly how: string | null;
  /** What the log says is in, as its record says it. */
  readonly now: FittedParts[LabourPart] | null;
  /** What goes in, as a record says it; null when the person chose the part freely. */
  readonly proposed: JsonObject | null;
}

/** A change of parts to be carried out. */
export interface ChangePlan {
  /** What is advised, as a heading; null when the person chose freely. */
  readonly title: string | null;
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
  /** Every part that can be changed; those with a proposal are the ones advised. */
  readonly parts: readonly ChangePart[];
  readonly advised: readonly LabourPart[];
  /** Side the screw sits on; null when nobody looked. */
  readonly screw: "air" | "fuel" | null;
  /** Grooves of the needle fitted; null when nobody counted. */
  readonly grooves: number | null;
  /** The record that made the setup of now. */
  readonly record: string | null;
  readonly drawer: readonly { readonly part: DrawerPart; readonly count: number }[];
  /** What the numbers on the jets mean on this carburetor. */
  readonly numbering: "bore" | "flow" | null;
}

/**
 * What is needed to change parts on a bike: those of a step of the advice (0 is the step advised), or any.
 * @param step null, or a step that changes nothing: the person chooses the parts
 */
export function changePlan(
  { shop, words }: EngineState,
  { bike, step }: { readonly bike: string; readonly step: number | null },
): Outcome<ChangePlan> {
  const made = bikeCase(shop, bike);
  if (!made.ok) return made;
  const story = shop.bikes.get(bike)!;
  const advice = step === null ? null : adviceIn(shop, bike, words);
  const ways = advice?.ok ? [advice.value.step, ...advice.value.others] : [];
  const asked = step === null ? undefined : ways[step];
  const change = asked !== undefined && asked.situation !== null ? asked : null;
  const setup = change?.situation?.setup ?? null;
  const told = story.now.setup.parts;
  const listed = change?.changes.map(({ part }) => part) ?? [];
  // A needle goes in with its clip, wherever the clip was before.
  const advised =
    listed.includes("needle") && !listed.includes("clip") ? [...listed, "clip" as const] : listed;
  const screw = story.description?.carburetor?.screw ?? "unknown";
  const needle = told.needle;
  return accept({
    title: change?.title ?? null,
    tools: change?.tools ?? [],
    cautions: change?.cautions ?? [],
    parts: CHANGED_PARTS.map((part) => ({
      part,
      how: change?.how[listed.indexOf(part)] ?? null,
      now: told[part] ?? null,
      proposed: setup !== null && advised.includes(part) ? toldOf(part, setup, shop.drawer) : null,
    })),
    advised: CHANGED_PARTS.filter((part) => advised.includes(part)),
    screw: screw === "unknown" ? null : screw,
    grooves: needle !== undefined && needle !== "unknown" ? (needle.grooves ?? null) : null,
    record: story.now.setup.record,
    drawer: shop.drawer,
    numbering: story.description?.carburetor?.jetNumbering ?? null,
  });
}

type CountedParts = EngineState["shop"]["drawer"];

/** A part of a setup as a record says it; null when the setup does not know it. */
function toldOf(part: LabourPart, setup: Setup, drawer: CountedParts): JsonObject | null {
  switch (part) {
    case "main":
    case "pilot":
      return toldJet(setup[part]);
    case "clip":
      return setup.clip.part === null ? null : { groove: setup.clip.part };
    case "slide":
      return setup.cutaway.part === null ? null : { cutawayMm: tidy(toMillimetre(setup.cutaway.part)) };
    case "screw":
      return setup.screw.part === null ? null : { turnsOut: setup.screw.part.turnsOut };
    case "needleJet":
      return setup.needleJet.part === null ? null : { boreMm: tidy(toMillimetre(setup.needleJet.part)) };
    case "needle":
      return setup.needle.part === null ? null : toldNeedle(setup.needle.part.marks, drawer);
  }
}

function toldJet({ part }: Known<Jet>): JsonObject | null {
  if (part === null) return null;
  return {
    number: part.number,
    numbering: part.numbering,
    ...(part.maker.trim() === "" ? {} : { maker: part.maker }),
  };
}

/** The needle as the drawer tells it, shape and all. */
function toldNeedle(marks: string, drawer: CountedParts): JsonObject {
  const owned = drawer.find(({ part }) => part.part === "needle" && part.marks.trim() === marks.trim());
  if (owned === undefined) return { marks };
  const { part: _part, count: _count, ...told } = owned.part;
  return told as unknown as JsonObject;
}

/** Millimetres without the tail that metres leave. */
const tidy = (millimetres: number): number => Math.round(millimetres * 1e4) / 1e4;
