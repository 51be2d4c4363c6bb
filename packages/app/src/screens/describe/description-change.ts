import { accept, type Outcome, refuse } from "@jetwright/core";
import type { Description, JsonObject } from "@jetwright/records";
import { heightText, readHeight, type Units } from "../../preferences/units.ts";
import { typedNumber } from "../../ui/number-field.tsx";
import type { Words } from "../../words/en.ts";

/** A description as typed; empty is not told. */
export interface DescriptionTyped {
  readonly name: string;
  readonly strokes: "" | "2" | "4";
  readonly cylinders: "" | "1" | "2";
  readonly displacement: string;
  readonly bore: string;
  readonly numbering: "" | "bore" | "flow";
  readonly screw: "" | "air" | "fuel";
  readonly place: string;
  readonly height: string;
  readonly use: string;
}

/** What is known of a bike, as it would be typed. */
export function typedDescription(told: Description | null, units: Units): DescriptionTyped {
  const bore = told?.carburetor?.bore;
  const screw = told?.carburetor?.screw;
  const heightM = told?.place?.heightM;
  return {
    name: told?.name ?? "",
    strokes: told?.engine === undefined ? "" : `${told.engine.strokes}`,
    cylinders: told?.engine?.cylinders === undefined ? "" : `${told.engine.cylinders}`,
    displacement: told?.engine?.displacementCc === undefined ? "" : `${told.engine.displacementCc}`,
    bore: bore?.shape === "round" ? `${bore.diameterMm}` : "",
    numbering: told?.carburetor?.jetNumbering ?? "",
    screw: screw === undefined || screw === "unknown" ? "" : screw,
    place: told?.place?.name ?? "",
    height: heightM === undefined ? "" : heightText(heightM, units),
    use: told?.use ?? "",
  };
}

/**
 * The record that says what was changed against before, field by field; null when nothing was. Refuses by the field
 * that is wrong. A later description adds to an earlier one, so what is emptied stays as it was.
 */
export function descriptionChange(
  before: DescriptionTyped,
  typed: DescriptionTyped,
  units: Units,
  words: Words["newBike"],
): Outcome<JsonObject | null, keyof DescriptionTyped> {
  const changed = (field: keyof DescriptionTyped): string | null => {
    const text = typed[field].trim();
    return text === "" || text === before[field].trim() ? null : text;
  };
  const number = (
    field: "displacement" | "bore",
    [least, most, unit]: readonly [number, number, string],
  ): Outcome<number | null, keyof DescriptionTyped> => {
    const text = changed(field);
    if (text === null) return accept(null);
    const value = typedNumber(text.replace(new RegExp(`\\s*${unit}$`, "i"), ""));
    if (value === null) return refuse(field, words.number);
    if (value >= least && value <= most) return accept(value);
    return refuse(field, words.range(least, most, unit));
  };
  if (typed.strokes === "") return refuse("strokes", words.missing);
  const displacement = number("displacement", [20, 1000, "cc"]);
  if (!displacement.ok) return displacement;
  const bore = number("bore", [5, 70, "mm"]);
  if (!bore.ok) return bore;
  const height = changed("height");
  const heightM = height === null ? null : readHeight(height, units);
  if (height !== null && (heightM === null || heightM < -500 || heightM > 6000)) {
    return refuse("height", words.heightWrong);
  }
  const [name, numbering, screw, place, use] = (["name", "numbering", "screw", "place", "use"] as const).map(
    (field) => changed(field)?.slice(0, 200) ?? null,
  );
  const cylinders = changed("cylinders");
  const engine = changed("strokes") !== null || cylinders !== null || displacement.value !== null;
  const body: JsonObject = {
    ...(name ? { name } : {}),
    ...(engine
      ? {
          engine: {
            strokes: Number(typed.strokes),
            ...(cylinders === null ? {} : { cylinders: Number(cylinders) }),
            ...(displacement.value === null ? {} : { displacementCc: displacement.value }),
          },
        }
      : {}),
    ...(bore.value !== null || numbering || screw
      ? {
          carburetor: {
            ...(bore.value === null ? {} : { bore: { shape: "round", diameterMm: bore.value } }),
            ...(numbering ? { jetNumbering: numbering } : {}),
            ...(screw ? { screw } : {}),
          },
        }
      : {}),
    ...(place || heightM !== null
      ? { place: { ...(place ? { name: place } : {}), ...(heightM === null ? {} : { heightM }) } }
      : {}),
    ...(use ? { use } : {}),
  };
  return accept(Object.keys(body).length === 0 ? null : body);
}
