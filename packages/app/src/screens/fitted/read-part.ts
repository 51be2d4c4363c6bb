import {
  accept,
  type HowKnown,
  type Outcome,
  readCutaway,
  readGroove,
  readJetNumber,
  readTurns,
  refuse,
  toMillimetre,
} from "@jetwright/core";
import type { FittedPart, JsonObject } from "@jetwright/records";
import { typedNumber } from "../../ui/number-field.tsx";
import type { Words } from "../../words/en.ts";
import type { Why } from "../../words/use-refusal.ts";

/** The fields a part is typed into. */
export type PartField = "number" | "maker" | "marks" | "grooves" | "pitch";
export type PartTyped = Readonly<Partial<Record<PartField, string>>>;

export const FIELDS: Readonly<Record<FittedPart, readonly PartField[]>> = {
  main: ["number", "maker"],
  pilot: ["number", "maker"],
  mainAirJet: ["number", "maker"],
  pilotAirJet: ["number", "maker"],
  needle: ["marks", "grooves", "pitch"],
  clip: ["number"],
  needleJet: ["number"],
  slide: ["number"],
  screw: ["number"],
  fuelLevel: ["number"],
};

/** The words of the form, and how what the core refuses is said; in its own English where that is left out. */
export type PartWords = Words["fitted"]["edit"] & {
  readonly whyNot?: (why: Why) => string;
};

/** More grooves than any needle has: the bound where nobody counted. */
const MOST_GROOVES = 12;

/**
 * A part as typed, as a record says it; refuses by the field that is wrong, with what to type instead. What else was
 * told of the same part, such as the shape of its needle, stays.
 * @param before what the record says now
 * @param grooves grooves of the needle fitted, null when nobody counted
 */
export function readPart(
  part: FittedPart,
  typed: PartTyped,
  how: Exclude<HowKnown, "unknown">,
  words: PartWords,
  { before, grooves }: { readonly before?: unknown; readonly grooves: number | null },
): Outcome<JsonObject, PartField> {
  const number = (typed.number ?? "").trim();
  if (part !== "needle" && number === "") return refuse("number", words.needed);
  switch (part) {
    case "main":
    case "pilot":
    case "mainAirJet":
    case "pilotAirJet": {
      const read = readJetNumber(number);
      if (!read.ok) return refuse("number", words.whyNot?.(read) ?? read.detail);
      const maker = (typed.maker ?? "").trim().slice(0, 200);
      const { numbering } = objectOf(before);
      return accept({
        number: read.value,
        ...(numbering === undefined ? {} : { numbering }),
        ...(maker === "" ? {} : { maker }),
        how,
      });
    }
    case "needle":
      return readNeedle(typed, how, words, objectOf(before));
    case "clip": {
      if (grooves === null && /middle|bottom|last/i.test(number)) return refuse("number", words.whole);
      const read = readGroove(number, { grooves: grooves ?? MOST_GROOVES });
      return read.ok
        ? accept({ groove: read.value, how })
        : refuse("number", words.whyNot?.(read) ?? read.detail);
    }
    case "slide": {
      const read = readCutaway(number);
      return read.ok
        ? accept({ cutawayMm: Math.round(toMillimetre(read.value) * 1000) / 1000, how })
        : refuse("number", words.whyNot?.(read) ?? read.detail);
    }
    case "screw": {
      const read = readTurns(number);
      return read.ok
        ? accept({ turnsOut: read.value, how })
        : refuse("number", words.whyNot?.(read) ?? read.detail);
    }
    case "needleJet": {
      const read = inRange(number, 0.5, 6, words);
      return read.ok ? accept({ boreMm: read.value, how }) : read;
    }
    case "fuelLevel": {
      const read = inRange(number, -10, 60, words);
      return read.ok ? accept({ liftMm: read.value, how }) : read;
    }
  }
}

function readNeedle(
  typed: PartTyped,
  how: Exclude<HowKnown, "unknown">,
  words: Words["fitted"]["edit"],
  before: JsonObject,
): Outcome<JsonObject, PartField> {
  const marks = (typed.marks ?? "").trim().slice(0, 200);
  if (marks === "") return refuse("marks", words.needed);
  const grooves = (typed.grooves ?? "").trim();
  const count = typedNumber(grooves);
  if (grooves !== "" && !(count !== null && Number.isInteger(count) && count >= 1 && count <= MOST_GROOVES)) {
    return refuse("grooves", words.whole);
  }
  const pitch = (typed.pitch ?? "").trim();
  const apart = typedNumber(pitch);
  if (pitch !== "" && !(apart !== null && apart > 0 && apart <= 5)) {
    return refuse("pitch", apart === null ? words.number : words.range(0.1, 5, "mm"));
  }
  return accept({
    ...(before.marks === marks ? before : {}),
    marks,
    ...(count === null ? {} : { grooves: count }),
    ...(apart === null ? {} : { groovePitchMm: apart }),
    how,
  });
}

function inRange(
  typed: string,
  least: number,
  most: number,
  words: Words["fitted"]["edit"],
): Outcome<number, PartField> {
  const value = typedNumber(typed.replace(/mm$/i, ""));
  if (value === null) return refuse("number", words.number);
  return value >= least && value <= most ? accept(value) : refuse("number", words.range(least, most, "mm"));
}

const objectOf = (told: unknown): JsonObject =>
  typeof told === "object" && told !== null ? (told as JsonObject) : {};

/** What the record says of a part, as it would be typed. */
export function typedFrom(part: FittedPart, told: unknown): PartTyped {
  const said = objectOf(told);
  const text = (value: unknown): string =>
    typeof value === "number" || typeof value === "string" ? String(value) : "";
  if (part === "needle") {
    return { marks: text(said.marks), grooves: text(said.grooves), pitch: text(said.groovePitchMm) };
  }
  const key = {
    clip: "groove",
    needleJet: "boreMm",
    slide: "cutawayMm",
    screw: "turnsOut",
    fuelLevel: "liftMm",
  } as Readonly<Record<string, string>>;
  return { number: text(said[key[part] ?? "number"]), maker: text(said.maker) };
}
