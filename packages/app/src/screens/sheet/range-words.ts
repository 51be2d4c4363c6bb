import { fromCelsius, fromMetre, toFahrenheit, toFoot } from "@jetwright/core";
import type { StaysRight } from "../../engine/answers/sheet/stays-right.ts";
import type { Units } from "../../preferences/units.ts";
import type { Words } from "../../words/en.ts";
import { figure, plainFigure } from "../../words/figures.ts";

type SheetWords = Words["sheet"];

const minus = (x: number): string => plainFigure(x, "en", 0);

/** A temperature rounded toward the inside of its range, so that the printed one is never past the edge. */
function inward(celsius: number, way: "up" | "down", { temperature }: Units): string {
  const value = temperature === "F" ? toFahrenheit(fromCelsius(celsius)) : celsius;
  return `${minus(way === "up" ? Math.ceil(value) : Math.floor(value))} °${temperature}`;
}

/** Heights are told to the next 10 m or 50 ft inside the range. */
const COARSE = { m: 10, ft: 50 };

function height(metres: number, way: "up" | "down", { height: unit }: Units): string {
  const value = unit === "ft" ? toFoot(fromMetre(metres)) : metres;
  const coarse = COARSE[unit];
  const rounded = (way === "up" ? Math.ceil(value / coarse) : Math.floor(value / coarse)) * coarse;
  return `${minus(rounded)} ${unit}`;
}

/** How far the air may move, a line each: temperature, height (above the sea where that is known), density. */
export function rangeWords(
  range: StaysRight,
  heightM: number | null,
  units: Units,
  words: SheetWords,
): readonly string[] {
  const { coldest, warmest, down, up } = range;
  const lowest =
    down === null
      ? words.seaLevel
      : heightM === null
        ? words.lower(height(down, "down", units))
        : heightM - down <= 0
          ? words.seaLevel
          : height(heightM - down, "up", units);
  const highest =
    up === null
      ? words.anyHeight
      : heightM === null
        ? words.higher(height(up, "down", units))
        : height(heightM + up, "down", units);
  return [
    words.sameHeight(
      coldest === null ? words.anyCold : inward(coldest, "up", units),
      warmest === null ? words.anyWarm : inward(warmest, "down", units),
    ),
    words.sameTemperature(lowest, highest),
    words.densities(figure(range.thinnest, 2, units.language), figure(range.thickest, 2, units.language)),
  ];
}
