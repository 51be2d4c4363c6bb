import type { Setup, SetupPart } from "@jetwright/core";
import type { FittedPart } from "@jetwright/records";
import { type PartRow, partRows } from "./part-rows.ts";
import type { Saying } from "./story/story-words.ts";

/** What records call the parts that the core calls otherwise. */
const RECORDED: Partial<Record<SetupPart, FittedPart>> = { cutaway: "slide", fuelLift: "fuelLevel" };

/** What is fitted with its name: "main jet 175 (bore, 1/100 mm)"; "main jet not known". */
export function partLine(setup: Setup, { part, value }: PartRow, say: Saying): string {
  const name =
    part === "screw" ? say.screwSide(setup.body.screwKind) : say.part[(RECORDED[part] ?? part) as FittedPart];
  return value === null ? say.notKnown(name) : `${name} ${value}`;
}

/** A whole setup, a line for each part with how it is known, from closed to full throttle. */
export const setupLines = (setup: Setup, say: Saying): readonly string[] =>
  partRows(setup, say.core).map((row) => {
    const line = partLine(setup, row, say);
    return row.how === "unknown" ? line : `${line}, ${say.how[row.how]}`;
  });
