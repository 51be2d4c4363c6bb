/** What is typed of a new bike, as typed; empty is not known. */
export interface BikeDraft {
  readonly name: string;
  readonly strokes: "" | "2" | "4";
  readonly cylinders: "1" | "2";
  readonly displacement: string;
  readonly bore: string;
  readonly pilot: string;
  readonly main: string;
  readonly numbering: "" | "bore" | "flow" | "unsure";
  readonly how: "read by eye" | "measured" | "told";
  readonly marks: string;
  readonly grooves: string;
  readonly clip: string;
  readonly needleJet: string;
  readonly cutaway: string;
  readonly screw: "" | "air" | "fuel" | "unsure";
  readonly turns: string;
  readonly place: string;
  readonly height: string;
  readonly temperature: string;
  readonly ethanol: "" | "0" | "5" | "10" | "unsure";
  readonly oil: string;
  readonly use: string;
}

export const NEW_BIKE: BikeDraft = {
  name: "",
  strokes: "",
  cylinders: "1",
  displacement: "",
  bore: "",
  pilot: "",
  main: "",
  numbering: "",
  how: "read by eye",
  marks: "",
  grooves: "",
  clip: "",
  needleJet: "",
  cutaway: "",
  screw: "",
  turns: "",
  place: "",
  height: "",
  temperature: "",
  ethanol: "",
  oil: "",
  use: "",
};

const CHOICES: Readonly<Partial<Record<keyof BikeDraft, readonly string[]>>> = {
  strokes: ["", "2", "4"],
  cylinders: ["1", "2"],
  numbering: ["", "bore", "flow", "unsure"],
  how: ["read by eye", "measured", "told"],
  screw: ["", "air", "fuel", "unsure"],
  ethanol: ["", "0", "5", "10", "unsure"],
};

/** A draft as this or another version of the app stored it; what is not understood starts empty. */
export function readBikeDraft(stored: unknown): BikeDraft {
  if (typeof stored !== "object" || stored === null) return NEW_BIKE;
  const told = stored as Record<string, unknown>;
  const kept = (Object.keys(NEW_BIKE) as (keyof BikeDraft)[]).flatMap((field) => {
    const value = told[field];
    const understood = typeof value === "string" && (CHOICES[field]?.includes(value) ?? true);
    return understood ? [[field, value]] : [];
  });
  return { ...NEW_BIKE, ...Object.fromEntries(kept) };
}
