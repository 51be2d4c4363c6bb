import {
  type CoreWords,
  type HowKnown,
  type Jet,
  type Known,
  SETUP_ORDER,
  type Setup,
  type SetupPart,
  toMillimetre,
} from "@jetwright/core";
import { valueWords } from "../sentences.ts";

export interface PartRow {
  readonly part: SetupPart;
  /** What is fitted, without its name; null when nobody knows. */
  readonly value: string | null;
  readonly how: HowKnown;
}

/** A part that differs: what it is in each, without its name; null where nobody knows. */
export interface PartCompared {
  readonly part: SetupPart;
  readonly from: string | null;
  readonly to: string | null;
}

/** Every part of a setup as a row: its value without its name, and how it is known. */
export const partRows = (setup: Setup, words: CoreWords): readonly PartRow[] =>
  SETUP_ORDER.map((part) => {
    const fitted: Known<unknown> = setup[part];
    return { part, value: fitted.part === null ? null : partValue(setup, part, words), how: fitted.how };
  });

function partValue(setup: Setup, part: SetupPart, words: CoreWords): string {
  const say = valueWords(words.language);
  const jet = ({ number, numbering, maker }: Jet) => words.parts.jet({ number, numbering, maker });
  const millimetres = (x: Parameters<typeof toMillimetre>[0], digits: number) =>
    words.figure(toMillimetre(x).toFixed(digits));
  switch (part) {
    case "main":
    case "pilot":
    case "mainAirJet":
    case "pilotAirJet":
      return jet(setup[part].part!);
    case "needle": {
      const { marks, grooves, profile } = setup.needle.part!;
      const straight = profile === null ? null : millimetres(profile.straightDiameter, 3);
      return say.needle(marks.trim(), grooves, straight, profile?.tapers.length ?? 0);
    }
    case "clip": {
      const groove = setup.clip.part!;
      return say.clip(
        Math.floor(groove),
        setup.needle.part?.grooves ?? null,
        !Number.isInteger(groove as number),
      );
    }
    case "needleJet":
      return `${millimetres(setup.needleJet.part!, 2)} mm`;
    case "cutaway":
      return say.cutaway(words.figure(Number(toMillimetre(setup.cutaway.part!).toFixed(2))));
    case "screw":
      return words.parts.turnsOut(setup.screw.part!.turnsOut);
    case "fuelLift":
      return say.level(millimetres(setup.fuelLift.part!, 1));
  }
}
