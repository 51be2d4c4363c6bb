import { accept, type Outcome, type Refusal, refuse } from "../units/outcome.ts";
import { type Gallon, type OilMeasure, oilPerFuel, oilText } from "./oil-measure.ts";

const NUMBER = "([0-9]+(?:[.,][0-9]+)?)";
const OF_FUEL = "(?:of|to|in) (?:the )?(?:added )?(?:fuel|petrol|gas|gasoline)";
const OF_MIX = "(?:of|in) (?:the )?(?:total )?(?:mix|mixture|premix|total)";
const GALLON = "(?:us|imp|imperial|uk)";

const NONE = /^(0 ?%?|none|no|no oil|without oil|0 ml ?\/ ?l)$/;
const RATIO = new RegExp(`^${NUMBER} ?(?::|/|to|-) ?${NUMBER}$`);
const PERCENT = new RegExp(`^${NUMBER} ?(?:%|percent|per cent)(?: (${OF_FUEL}|${OF_MIX}))?$`);
const MILLILITRES = new RegExp(
  `^${NUMBER} ?(?:ml|cc|cm3|cm³) ?(?:/|per|a|to a|to the|in a) ?(?:1 ?)?(?:l|litre|liter)(?: (${OF_FUEL}|${OF_MIX}))?$`,
);
const OUNCES = new RegExp(
  `^${NUMBER} ?(${GALLON} )?(?:fl\\.? ?)?(?:oz|ounces?)\\.? ?(?:/|per|a|to a|in a) ?(${GALLON} )?(?:gal|gallon)\\.?$`,
);

type OilRefusal = "ambiguous" | "not an oil ratio" | "oil";

/**
 * Reads an oil ratio as people type it: "50:1", "1:50", "2 % of fuel", "20 ml/l", "2.56 US oz per US gallon",
 * "none"; decimal comma or point. Where the words leave two meanings it refuses as "ambiguous" and names both.
 */
export function readOil(typed: string): Outcome<OilMeasure, OilRefusal> {
  const text = typed.trim().toLowerCase().replace(/\s+/g, " ");
  if (NONE.test(text)) return accept({ by: "none" });
  const measure = ratio(text) ?? percent(text) ?? millilitres(text) ?? ounces(text) ?? bare(text);
  if (!measure) {
    return refuse(
      "not an oil ratio",
      `"${typed.trim()}" is not an oil ratio. Write it like 50:1, 20 ml/l, 2 % of fuel, or none.`,
    );
  }
  if ("ok" in measure) return measure;
  const oil = oilPerFuel(measure);
  return oil.ok ? accept(measure) : oil;
}

type Found = OilMeasure | Refusal<OilRefusal> | null;

function ratio(text: string): Found {
  const found = RATIO.exec(text);
  return found && { by: "ratio", numbers: [number(found[1]!), number(found[2]!)] };
}

function percent(text: string): Found {
  const found = PERCENT.exec(text);
  if (!found) return null;
  const value = number(found[1]!);
  if (found[2]) return { by: isMix(found[2]) ? "percent of mix" : "percent of fuel", percent: value };
  return either(
    text,
    { by: "percent of fuel", percent: value },
    `${value} % of fuel`,
    { by: "percent of mix", percent: value },
    `${value} % of mix`,
  );
}

function millilitres(text: string): Found {
  const found = MILLILITRES.exec(text);
  if (!found) return null;
  const value = number(found[1]!);
  if (found[2] && isMix(found[2])) return { by: "percent of mix", percent: value / 10 };
  return { by: "millilitres a litre", millilitres: value };
}

function ounces(text: string): Found {
  const found = OUNCES.exec(text);
  if (!found) return null;
  const value = number(found[1]!);
  const [ounce, gallon] = [which(found[2]), which(found[3])];
  if (ounce || gallon) {
    return { by: "ounces a gallon", ounces: value, ounce: (ounce ?? gallon)!, gallon: (gallon ?? ounce)! };
  }
  return either(
    text,
    { by: "ounces a gallon", ounces: value, ounce: "US", gallon: "US" },
    `${value} US oz per US gallon`,
    { by: "ounces a gallon", ounces: value, ounce: "imperial", gallon: "imperial" },
    `${value} imp oz per imp gallon`,
  );
}

function bare(text: string): Found {
  const found = new RegExp(`^${NUMBER}$`).exec(text);
  if (!found) return null;
  const value = number(found[1]!);
  return either(
    text,
    { by: "ratio", numbers: [value, 1] },
    `${value}:1`,
    { by: "percent of fuel", percent: value },
    `${value} % of fuel`,
  );
}

function either(text: string, one: OilMeasure, sayOne: string, two: OilMeasure, sayTwo: string): Found {
  const meanings = [
    [one, sayOne],
    [two, sayTwo],
  ] as const;
  const possible = meanings.flatMap(([measure, say]) => {
    const oil = oilPerFuel(measure);
    return oil.ok ? [`"${say}" if it is ${oilText(oil.value)}`] : [];
  });
  if (possible.length === 0) return oilPerFuel(one) as Refusal<"oil">;
  return refuse("ambiguous", `"${text}" can mean more than one thing. Write ${possible.join(", or ")}.`);
}

const isMix = (words: string): boolean => /mix|total/.test(words) && !/fuel|petrol|gas/.test(words);
const which = (word: string | undefined): Gallon | null =>
  word === undefined ? null : word.startsWith("us") ? "US" : "imperial";
const number = (digits: string): number => Number(digits.replace(",", "."));
