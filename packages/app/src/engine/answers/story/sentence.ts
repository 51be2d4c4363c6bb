import {
  checkById,
  type FaultId,
  fromCelsius,
  fromMetre,
  type Opening,
  openingName,
  signById,
  TAKE_FIGURES,
  testById,
  toFahrenheit,
  toFoot,
} from "@jetwright/core";
import { type Entry, openingOf, type UsedEntry, type UsedEntryOf } from "@jetwright/records";
import { DIGITS } from "../listen/figure-digits.ts";
import { drawerWords } from "./drawer-words.ts";
import { type Find, fittedWords } from "./fitted-words.ts";
import { joined } from "./joined.ts";
import type { Saying } from "./story-words.ts";

const tidy = (x: number): number => Math.round(x * 100) / 100;
const openingWords = (said: number | string): string => openingName(openingOf(said) as Opening);

/** What a record says, one sentence in plain words; every kind, and what is kept without being used. */
export function sentenceOf(entry: Entry, words: Saying, find: Find = () => undefined): string {
  if (entry.reading !== "used") {
    if (entry.reading === "unknown-kind") return words.unknownKind(entry.kind);
    return entry.reading === "newer-version" ? words.newerVersion(entry.kind) : words.faulty(entry.kind);
  }
  return usedSentence(entry, words, find);
}

function usedSentence(entry: UsedEntry, words: Saying, find: Find): string {
  switch (entry.kind) {
    case "bike-described":
      return described(entry.body, words);
    case "bike-put-away":
      return joined([entry.body.away === false ? words.backAgain : words.putAway, entry.body.why]);
    case "setup-fitted":
      return fittedWords(entry.body, words, find);
    case "air-measured":
      return words.air(airWords(entry.body, words));
    case "fuel-used":
      return words.fuel(fuelWords(entry.body, words));
    case "ride-reported":
      return words.rode(rideWords(entry.body, words));
    case "test-done": {
      const test = testById(entry.body.test);
      const said = test && words.core.tests[test.id];
      const outcomes: Readonly<Record<string, string>> = said?.outcomes ?? {};
      const outcome = outcomes[entry.body.outcome] ?? entry.body.outcome;
      const where = entry.body.opening;
      const named = said?.words ?? entry.body.test;
      const name = where === undefined ? named : words.at(named, openingWords(where));
      return joined([words.tested(name, outcome), quoted(entry.body.words, words)], "; ");
    }
    case "check-done": {
      const { check, found, fault } = entry.body;
      const known = checkById(check);
      const what = joined(
        [words.checkFound[found], fault && words.core.faults[fault as FaultId].words],
        ": ",
      );
      return joined(
        [
          words.checked(known ? words.core.checks[known.id].words : check, what),
          quoted(entry.body.words, words),
        ],
        "; ",
      );
    }
    case "mixture-measured":
      return words.measured(readings(entry.body, words));
    case "parts-counted":
      return words.counted(drawerWords(entry.body.parts, words));
    case "parts-bought":
      return words.bought(drawerWords(entry.body.parts, words));
    case "parts-used":
      return words.used(drawerWords(entry.body.parts, words));
    case "needle-measured":
      return words.needle(entry.body.marks, entry.body.points.length);
    case "labour-noted":
      return words.labour(
        joined(
          Object.entries(entry.body.minutes).map(([part, minutes]) =>
            words.minutes(words.part[part as keyof Saying["part"]] ?? part, minutes as number),
          ),
        ),
      );
    case "preference-set":
      if (entry.body.oneChangeAtATime === undefined) return words.preference;
      return entry.body.oneChangeAtATime ? words.oneAtATime : words.severalAtOnce;
    case "engine-changed":
      return joined([words.engine(entry.body.what), quoted(entry.body.words, words)], "; ");
    case "known-good-marked":
      return joined([words.good, quoted(entry.body.words, words)], ": ");
    case "sound-heard":
      return words.sound(joined(heardWords(entry.body, words)));
    case "sound-proved":
      return words.proved(`${tidy(entry.body.middlePercent)}`, `${tidy(entry.body.most95Percent)}`);
    case "note":
      return words.note(entry.body.text);
    case "photo":
      return words.photo(joined([entry.body.part && words.part[entry.body.part], entry.body.of]));
    case "advice-given": {
      const { followed } = entry.body;
      const done = followed === undefined ? null : followed ? words.followed : words.notFollowed;
      return joined([words.advice(entry.body.words), done && `(${done})`], " ");
    }
    case "customer-described":
      return words.customer(joined([entry.body.name, entry.body.reach, entry.body.notes]));
    case "person-erased":
      return words.personErased;
    case "order-opened":
      return words.orderOpened(quoted(entry.body.complaint, words) ?? "");
    case "work-noted":
      return words.worked(workWords(entry.body, words));
    case "order-closed":
      return words.orderClosed(entry.body.handedOver?.trim() ?? "");
    case "record-struck":
      return joined(
        [struckWords(find(entry.body.record), words, find), entry.body.why && words.why(entry.body.why)],
        "; ",
      );
    default:
      return entry satisfies never;
  }
}

/** A strike, or a strike taken back, with what it is about. */
function struckWords(struck: Entry | undefined, words: Saying, find: Find): string {
  if (struck === undefined) return words.struckUnknown;
  if (struck.reading !== "used" || struck.kind !== "record-struck") {
    return words.struckOne(`“${sentenceOf(struck, words)}”`);
  }
  const about = find(struck.body.record);
  return about === undefined || about.kind === "record-struck"
    ? words.strikeBack
    : words.countsAgain(`“${sentenceOf(about, words)}”`);
}

type Body<Kind extends UsedEntry["kind"]> = UsedEntryOf<Kind>["body"];

const quoted = (text: string | undefined, words: Saying): string | null =>
  text === undefined || text.trim() === "" ? null : words.quoted(text.trim());

function described(body: Body<"bike-described">, words: Saying): string {
  const { engine, carburetor } = body;
  const bore = carburetor?.bore;
  const boreWords =
    bore === undefined
      ? null
      : bore.shape === "round"
        ? `${tidy(bore.diameterMm)} mm`
        : `${tidy(bore.widthMm)} × ${tidy(bore.heightMm)} mm`;
  const screw = carburetor?.screw;
  return words.described(
    joined([
      body.name,
      engine && words.strokes(engine.strokes),
      engine?.displacementCc !== undefined && words.cc(tidy(engine.displacementCc)),
      boreWords && words.carburetor(boreWords),
      screw !== undefined && screw !== "unknown" && words.screwSide(screw),
      body.use && words.use(body.use),
      body.place?.name,
      body.place?.heightM !== undefined && metres(body.place.heightM, words),
      body.notes && words.quoted(body.notes),
      body.customer !== undefined && (body.customer === null ? words.belongsNot : words.belongs),
    ]),
  );
}

const celsius = (c: number, words: Saying): string =>
  words.celsius(tidy(c), Math.round(toFahrenheit(fromCelsius(c))));
const metres = (m: number, words: Saying): string => words.metres(tidy(m), Math.round(toFoot(fromMetre(m))));

/** The air of a record in words, both units. */
export function airWords(body: Body<"air-measured">, words: Saying): string {
  return joined([
    body.temperatureC !== undefined && celsius(body.temperatureC, words),
    body.stationPressureHpa !== undefined && words.station(tidy(body.stationPressureHpa)),
    body.seaLevelPressureHpa !== undefined && words.seaLevel(tidy(body.seaLevelPressureHpa)),
    body.heightM !== undefined && metres(body.heightM, words),
    body.humidityPercent !== undefined && words.humidity(tidy(body.humidityPercent)),
    body.dewPointC !== undefined && words.dewPoint(tidy(body.dewPointC)),
    body.wetBulbC !== undefined && words.wetBulb(tidy(body.wetBulbC)),
    body.report && words.report(body.report),
    body.place,
  ]);
}

/** The fuel of a record in words. */
export function fuelWords(body: Body<"fuel-used">, words: Saying): string {
  const { oil } = body;
  const oilWords =
    oil === undefined
      ? null
      : typeof oil === "string"
        ? oil
        : "ratio" in oil
          ? `${oil.ratio}:1`
          : "percentOfFuel" in oil
            ? words.percentOfFuel(oil.percentOfFuel as number)
            : words.percentOfMix(oil.percentOfMix as number);
  const told = joined([
    body.name,
    body.ethanolPercent !== undefined && words.ethanol(body.ethanolPercent),
    body.alkylatePercent !== undefined && body.alkylatePercent > 0 && words.alkylate(body.alkylatePercent),
    oilWords && words.oil(oilWords),
  ]);
  return told === "" ? words.fuelNotTold : told;
}

function rideWords(body: Body<"ride-reported">, words: Saying): string {
  const signs = (body.reports ?? []).map(({ sign, opening, seen }) => {
    const known = signById(sign);
    const name = known === undefined ? sign : words.core.signs[known.id].words;
    const told = seen === false ? words.notSeen(name) : name;
    return opening === undefined ? told : words.sign(told, openingWords(opening));
  });
  const felt = (body.against?.felt ?? []).map((one) =>
    words.at(words.felt[one.felt], openingWords(one.opening)),
  );
  return joined([...signs, ...felt, body.warm === false && words.cold, quoted(body.words, words)], "; ");
}

function readings(body: Body<"mixture-measured">, words: Saying): string {
  return joined(
    body.readings.map(({ opening, errorPercent, lambda, wantedLambda }) => {
      const what =
        errorPercent === undefined
          ? words.lambda(lambda as number, wantedLambda as number)
          : errorPercent === 0
            ? words.right
            : errorPercent > 0
              ? words.rich(tidy(errorPercent))
              : words.lean(tidy(-errorPercent));
      return words.at(what, openingWords(opening));
    }),
  );
}

/** The figures of a take by name; how sure they are is the listener's own. */
function heardWords({ figures }: Body<"sound-heard">, words: Saying): readonly string[] {
  const told = TAKE_FIGURES.filter((name) => figures[name] !== undefined).map((name) => {
    const value = words.figure(figures[name]!.toFixed(DIGITS[name]));
    return `${words.heard[name].words} ${words.heard[name].unit(value)}`;
  });
  return figures.stalls === 1 ? [...told, words.stalled] : told;
}

/** What was done in which time, and what went into it. */
function workWords({ minutes, words: done, parts = [] }: Body<"work-noted">, words: Saying): string {
  return joined([
    minutes !== undefined && words.spent(tidy(minutes)),
    done?.trim(),
    ...parts.map(({ name, count }) => words.times(count, name)),
  ]);
}
