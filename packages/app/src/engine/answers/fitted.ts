import { accept, type HowKnown, type Outcome, type SetupPart } from "@jetwright/core";
import { bikeCase, type FITTED_PARTS, type FittedPart, type FittedParts } from "@jetwright/records";
import type { ShopInWords } from "../state.ts";
import { partRows } from "./part-rows.ts";

export interface FittedRow {
  readonly part: FittedPart;
  /** What is fitted, without its name; null when nobody knows. */
  readonly value: string | null;
  readonly how: HowKnown;
  /** As the record says it, to be edited. */
  readonly told: FittedParts[FittedPart];
}

export interface Fitted {
  /** From closed to full throttle, then what is only noted. */
  readonly rows: readonly FittedRow[];
  /** Side the screw sits on; null when nobody looked. */
  readonly screw: "air" | "fuel" | null;
  /** What the numbers on the jets mean on this carburetor; null when nobody said. */
  readonly numbering: "bore" | "flow" | null;
  /** Grooves of the needle fitted; null when nobody counted. */
  readonly grooves: number | null;
  /** The record that made the setup of now. */
  readonly record: string | null;
}

const NAME_IN_SETUP: Readonly<Partial<Record<FittedPart, SetupPart>>> = {
  slide: "cutaway",
  fuelLevel: "fuelLift",
};
const ORDER: readonly FittedPart[] = [
  "pilot",
  "screw",
  "slide",
  "needle",
  "clip",
  "needleJet",
  "main",
  "fuelLevel",
  "pilotAirJet",
  "mainAirJet",
] satisfies readonly (typeof FITTED_PARTS)[number][];

/** Every part of a bike as fitted now, each with how it is known. */
export function fittedOn({ shop, words }: ShopInWords, { bike }: { readonly bike: string }): Outcome<Fitted> {
  const made = bikeCase(shop, bike);
  if (!made.ok) return made;
  const story = shop.bikes.get(bike)!;
  const { setup } = story.now;
  const said = new Map(partRows(made.value.now.setup, words).map((row) => [row.part, row]));
  const screw = story.description?.carburetor?.screw ?? "unknown";
  const needle = setup.parts.needle;
  return accept({
    rows: ORDER.map((part): FittedRow => {
      const told = setup.parts[part];
      const row = said.get(NAME_IN_SETUP[part] ?? (part as SetupPart))!;
      // Turns of a screw whose side nobody looked at are known and cannot be used: they are shown all the same.
      if (
        row.value === null &&
        part === "screw" &&
        setup.parts.screw !== undefined &&
        setup.parts.screw !== "unknown"
      ) {
        const { turnsOut, how } = setup.parts.screw;
        return { part, value: words.parts.turnsOut(turnsOut), how: how ?? "told", told };
      }
      return { part, value: row.value, how: row.how, told };
    }),
    screw: screw === "unknown" ? null : screw,
    numbering: story.description?.carburetor?.jetNumbering ?? null,
    grooves: needle !== undefined && needle !== "unknown" ? (needle.grooves ?? null) : null,
    record: setup.record,
  });
}
