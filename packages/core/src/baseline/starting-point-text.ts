import { toCelsius, toCubicCentimetre, toHectopascal, toMillimetre } from "../units/convert.ts";
import type { CoreWords } from "../words/core-words.ts";
import type { StartingWords } from "../words/en/starting.ts";
import { upperFirst } from "../words/letters.ts";
import { refusalText } from "../words/refusal.ts";
import { warningText } from "../words/warning.ts";
import type { StartingFigure } from "./starting-figure.ts";
import type { StartingPoint } from "./starting-point.ts";

/** A starting point as a block of text to send to whoever asked for it. */
export function startingPointText(point: StartingPoint, core: CoreWords, words: StartingWords): string {
  const { bike, place, figures } = point;
  const say = words.text;
  const round = (x: number, digits: number): string => core.figure(Number(x.toFixed(digits)));
  const engine = [
    bike.displacement === null ? null : `${Math.round(toCubicCentimetre(bike.displacement))} cm³`,
    say.strokes(bike.strokes),
    bike.use === null ? null : say.uses[bike.use],
    say.bore(round(toMillimetre(point.bore), 1), bike.bore === null),
  ].filter((word) => word !== null);
  const nameOf = ({ part, numbering }: StartingFigure): string =>
    numbering === null ? say.part[part] : say.numbered(say.part[part], numbering);
  const startOf = ({ part, start }: StartingFigure): string => {
    const said = round(start, 2);
    return part === "clip"
      ? say.clip(said)
      : part === "screw"
        ? say.turns(said)
        : part === "cutaway"
          ? say.cutaway(said)
          : said;
  };
  const spreadOf = ({ part, low, high }: StartingFigure): string => {
    const range = low === high ? round(low, 2) : say.range(round(low, 2), round(high, 2));
    return part === "cutaway" ? `${range} mm` : range;
  };
  const rests = new Map<string, string[]>();
  for (const figure of figures) {
    const basis = words.restsOn(figure.restsOn).join("; ");
    rests.set(basis, [...(rests.get(basis) ?? []), nameOf(figure)]);
  }
  const width = (of: (figure: StartingFigure) => string, least: number): number =>
    Math.max(least, ...figures.map((figure) => of(figure).length + 2));
  const [names, starts] = [width(nameOf, 26), width(startOf, 28)];
  return [
    say.heading(engine.join(", ")),
    say.air(Math.round(toCelsius(place.air.temperature)), Math.round(toHectopascal(place.air.pressure))),
    "",
    ...figures.map((figure) =>
      `  ${nameOf(figure).padEnd(names)}${startOf(figure).padEnd(starts)}${spreadOf(figure)}`.trimEnd(),
    ),
    `  ${say.needle(words.needle(point.needlesAlike))}`,
    "",
    say.noSetting,
    ...section(
      say.know,
      point.warnings.map((warning) => warningText(warning, core)),
    ),
    ...section(
      say.rests,
      [...rests].map(
        ([basis, of]) => `${of.map((name, i) => (i === 0 ? upperFirst(name) : name)).join(", ")}: ${basis}.`,
      ),
    ),
    ...section(
      say.notUsed,
      point.leftOut.map((why) => refusalText(why, core)),
    ),
    ...section(say.firstRide, words.firstRide(bike.strokes)),
    ...section(say.next, words.afterwards(bike.screwKind), "numbered"),
    "",
  ].join("\n");
}

const section = (title: string, lines: readonly string[], style: "plain" | "numbered" = "plain"): string[] =>
  lines.length === 0
    ? []
    : ["", title, ...lines.map((line, i) => `  ${style === "numbered" ? `${i + 1}.` : "-"} ${line}`)];
