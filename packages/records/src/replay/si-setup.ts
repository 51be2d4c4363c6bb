import {
  type Body,
  fromMillimetre,
  type HowKnown,
  type Jet,
  type JetNumbering,
  type Known,
  known,
  type Setup,
  UNKNOWN,
} from "@jetwright/core";
import type { CaseWarnings } from "./case-warning.ts";
import type { Description } from "./description.ts";
import type { FittedParts } from "./setup-timeline.ts";
import { type MeasuredNeedles, siNeedle } from "./si-needle.ts";

interface ToldJet {
  readonly number: number;
  readonly numbering?: JetNumbering | undefined;
  readonly maker?: string | undefined;
}

/** A jet in SI; where its numbering is told neither with it nor for the carburetor, it is taken as a bore. */
export function siJet(told: ToldJet, usual: JetNumbering | undefined, warnings: CaseWarnings): Jet {
  const numbering = told.numbering ?? usual;
  if (numbering === undefined) {
    warnings.add({ code: "numbering-assumed" });
  }
  return { number: told.number, numbering: numbering ?? "bore", maker: told.maker ?? "" };
}

type ToldPart<Fields> = "unknown" | (Fields & { readonly how?: Exclude<HowKnown, "unknown"> | undefined });

/** How a part is taken to be known when the record does not say. */
const UNSTATED: Exclude<HowKnown, "unknown"> = "told";

function siKnown<Fields, Part>(
  told: ToldPart<Fields> | undefined,
  convert: (fields: Fields) => Part,
): Known<Part> {
  return told === undefined || told === "unknown" ? UNKNOWN : known(convert(told), told.how ?? UNSTATED);
}

/** What is needed besides the parts to make a setup. */
export interface SetupContext {
  readonly bike: string;
  readonly body: Body;
  readonly description: Description;
  readonly measured: MeasuredNeedles;
}

/** The parts fitted, in SI. */
export function siSetup(parts: FittedParts, context: SetupContext, warnings: CaseWarnings): Setup {
  const { body, description } = context;
  const usual = description.carburetor?.jetNumbering;
  const jet = (told: FittedParts["main"]): Known<Jet> => siKnown(told, (one) => siJet(one, usual, warnings));
  const needle = siKnown(parts.needle, (one) => siNeedle(one, context.bike, context.measured, warnings));
  const clip = siKnown(parts.clip, (one) => one.groove);
  if (needle.part !== null && clip.part !== null && clip.part > needle.part.grooves + 0.5) {
    warnings.add({
      code: "clip-beyond-grooves",
      given: { groove: clip.part, marks: needle.part.marks, grooves: needle.part.grooves },
    });
  }
  const screwKind = description.carburetor?.screw;
  const sideKnown = screwKind === "air" || screwKind === "fuel";
  if (!sideKnown && parts.screw !== undefined && parts.screw !== "unknown") {
    warnings.add({ code: "screw-side-unknown" });
  }
  return {
    body,
    pilot: jet(parts.pilot),
    main: jet(parts.main),
    needle,
    clip,
    needleJet: siKnown(parts.needleJet, (one) => fromMillimetre(one.boreMm)),
    cutaway: siKnown(parts.slide, (one) => fromMillimetre(one.cutawayMm)),
    screw: sideKnown ? siKnown(parts.screw, (one) => ({ kind: screwKind, turnsOut: one.turnsOut })) : UNKNOWN,
    fuelLift: siKnown(parts.fuelLevel, (one) => fromMillimetre(one.liftMm)),
    mainAirJet: jet(parts.mainAirJet),
    pilotAirJet: jet(parts.pilotAirJet),
  };
}
