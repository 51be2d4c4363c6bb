import { readOil } from "@jetwright/core";
import type { FittedPart, JsonObject } from "@jetwright/records";
import { readHeight, readTemperature, type Units } from "../../preferences/units.ts";
import type { Draft } from "../../store/shop.ts";
import { typedNumber } from "../../ui/number-field.tsx";
import type { Words } from "../../words/en.ts";
import type { Why } from "../../words/use-refusal.ts";
import { type PartTyped, readPart } from "../fitted/read-part.ts";
import type { BikeDraft } from "./bike-draft.ts";

/** What is wrong, by the field it was typed into. */
export type BikeFaults = Readonly<Partial<Record<keyof BikeDraft, string>>>;

export type BikeMade =
  | { readonly ok: true; readonly name: string; readonly records: (bike: string) => readonly Draft[] }
  | { readonly ok: false; readonly faults: BikeFaults };

/** Reads what was typed of a new bike into the records it becomes, or says every field that cannot be right. */
export function bikeRecords(
  draft: BikeDraft,
  units: Units,
  { newBike: words, fitted }: Pick<Words, "newBike" | "fitted">,
  whyNot: (why: Why) => string = ({ detail }) => detail,
): BikeMade {
  const faults: Partial<Record<keyof BikeDraft, string>> = {};

  const number = (field: keyof BikeDraft, least: number, most: number, unit: string): number | null => {
    const text = draft[field].trim().replace(new RegExp(`\\s*${unit}$`, "i"), "");
    if (text === "") return null;
    const value = typedNumber(text);
    if (value === null) faults[field] = words.number;
    else if (value < least || value > most) faults[field] = words.range(least, most, unit);
    else return value;
    return null;
  };
  const edge = (
    field: "height" | "temperature",
    read: (typed: string, units: Units) => number | null,
    least: number,
    most: number,
    wrong: string,
  ): number | null => {
    if (draft[field].trim() === "") return null;
    const value = read(draft[field], units);
    if (value !== null && value >= least && value <= most) return value;
    faults[field] = wrong;
    return null;
  };
  const part = (
    name: FittedPart,
    field: keyof BikeDraft,
    typed: PartTyped,
    grooves: number | null = null,
  ): JsonObject => {
    if (draft[field].trim() === "") return {};
    const read = readPart(name, typed, draft.how, { ...fitted.edit, whyNot }, { grooves });
    if (read.ok) return { [name]: read.value };
    faults[read.reason === "grooves" ? "grooves" : field] = read.detail;
    return {};
  };

  const strokes = draft.strokes === "" ? null : draft.strokes === "2" ? 2 : 4;
  if (strokes === null) faults.strokes = words.missing;
  const displacementCc = number("displacement", 20, 1000, "cc");
  const boreMm = number("bore", 5, 70, "mm");
  const counted = typedNumber(draft.grooves);
  if (draft.marks.trim() === "" && draft.grooves.trim() !== "" && !isCount(counted)) {
    faults.grooves = words.grooves12;
  }
  const parts: JsonObject = {
    ...part("pilot", "pilot", { number: draft.pilot }),
    ...part("main", "main", { number: draft.main }),
    ...part("needle", "marks", { marks: draft.marks, grooves: draft.grooves }),
    ...part("clip", "clip", { number: draft.clip }, isCount(counted) ? counted : null),
    ...part("needleJet", "needleJet", { number: draft.needleJet }),
    ...part("slide", "cutaway", { number: draft.cutaway }),
    ...part("screw", "turns", { number: draft.turns }),
  };
  const heightM = edge("height", readHeight, -500, 6000, words.heightWrong);
  const temperatureC = edge("temperature", readTemperature, -60, 60, words.temperatureWrong);
  const oil = strokes === 4 ? "" : draft.oil.trim();
  if (oil !== "") {
    const read = readOil(oil);
    if (!read.ok) faults.oil = whyNot(read);
  }
  if (strokes === null || Object.keys(faults).length > 0) return { ok: false, faults };

  const name = draft.name.trim().slice(0, 200) || words.bikeOf(strokes, displacementCc);
  const place = draft.place.trim().slice(0, 200);
  const use = draft.use.trim().slice(0, 200);
  const carburetor: JsonObject = {
    ...(boreMm === null ? {} : { bore: { shape: "round", diameterMm: boreMm } }),
    ...(draft.screw === "" ? {} : { screw: draft.screw === "unsure" ? "unknown" : draft.screw }),
    ...(draft.numbering === "bore" || draft.numbering === "flow" ? { jetNumbering: draft.numbering } : {}),
  };
  const described: JsonObject = {
    name,
    engine: {
      strokes,
      cylinders: Number(draft.cylinders),
      ...(displacementCc === null ? {} : { displacementCc }),
    },
    ...(Object.keys(carburetor).length === 0 ? {} : { carburetor }),
    ...(use === "" ? {} : { use }),
    ...(place === "" && heightM === null
      ? {}
      : {
          place: { ...(place === "" ? {} : { name: place }), ...(heightM === null ? {} : { heightM }) },
        }),
  };
  const fuel: JsonObject = {
    ...(draft.ethanol === "" || draft.ethanol === "unsure" ? {} : { ethanolPercent: Number(draft.ethanol) }),
    ...(oil === "" ? {} : { oil }),
  };
  return {
    ok: true,
    name,
    records: (bike) => [
      { kind: "bike-described", bike, body: described },
      ...(Object.keys(parts).length === 0
        ? []
        : [{ kind: "setup-fitted", bike, body: { ...parts, asFound: true } } as const]),
      ...(temperatureC === null
        ? []
        : [
            {
              kind: "air-measured",
              bike,
              body: {
                temperatureC,
                ...(heightM === null ? {} : { heightM }),
                ...(place === "" ? {} : { place }),
              },
            } as const,
          ]),
      ...(Object.keys(fuel).length === 0 ? [] : [{ kind: "fuel-used", bike, body: fuel } as const]),
    ],
  };
}

const isCount = (value: number | null): value is number =>
  value !== null && Number.isInteger(value) && value >= 1 && value <= 12;

/** An id for a bike: its name in small letters, and a few of chance so that two phones never mean two bikes by one. */
export function bikeId(name: string, chance: string): string {
  const plain = name
    .normalize("NFKD")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "")
    .slice(0, 40)
    .replace(/-+$/, "");
  return `${plain === "" ? "bike" : plain}-${chance}`;
}
