import type { LabourPart } from "@jetwright/core";
import { NumberField } from "../../ui/number-field.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { useWords } from "../../words/use-words.ts";
import { FIELDS, type PartField, type PartTyped } from "../fitted/read-part.ts";

interface PartFieldsProps {
  readonly part: LabourPart;
  readonly typed: PartTyped;
  readonly wrong: { readonly field: string; readonly detail: string } | null;
  readonly onType: (typed: PartTyped) => void;
}

/** The fields one part is written into. */
export function PartFields({ part, typed, wrong, onType }: PartFieldsProps) {
  const words = useWords().fitted.edit;
  const labels: Readonly<Record<PartField, string>> = {
    number: {
      main: words.jet,
      pilot: words.jet,
      clip: words.groove,
      slide: words.cutaway,
      screw: words.turns,
      needleJet: words.bore,
      needle: words.marks,
    }[part],
    maker: words.maker,
    marks: words.marks,
    grooves: words.grooves,
    pitch: words.pitch,
  };
  const hints: Readonly<Partial<Record<PartField, string | undefined>>> = {
    number: { screw: words.turnsHint, needleJet: words.boreHint, main: words.jetHint, pilot: words.jetHint }[
      part as string
    ],
    maker: words.makerHint,
    marks: words.marksHint,
  };
  return (
    <>
      {FIELDS[part].map((field) => {
        const common = {
          label: labels[field],
          hint: hints[field],
          value: typed[field] ?? "",
          wrong: wrong?.field === field ? wrong.detail : null,
          onInput: (text: string) => onType({ ...typed, [field]: text }),
        };
        // Fractions, groove words and marks need the whole keyboard.
        const plain = field === "maker" || field === "marks" || part === "clip" || part === "screw";
        return plain ? <TextField key={field} {...common} /> : <NumberField key={field} {...common} />;
      })}
    </>
  );
}
