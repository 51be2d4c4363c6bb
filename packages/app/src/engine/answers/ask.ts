import { bikeCase, type UsedEntry } from "@jetwright/records";
import { type AskWords, ask } from "../../words/en/ask.ts";
import { sentencesIn } from "../sentences.ts";
import type { EngineState } from "../state.ts";
import { setupLines } from "./part-lines.ts";
import { personOf } from "./story/person-of.ts";
import { airWords, fuelWords, sentenceOf } from "./story/sentence.ts";
import { setupWords } from "./story/setup-words.ts";
import { type Saying, storyWords } from "./story/story-words.ts";

export interface AskView {
  readonly name: string;
  /** The thirteen things helpers ask back, each answered or said to be not known. */
  readonly items: readonly { readonly title: string; readonly answer: string; readonly known: boolean }[];
  readonly text: string;
}

/** Most rides and checks told: the older ones are history. */
const MOST = 4;

/** Checks that answer a question of their own. */
const FLOAT_CHECKS = /float|vent|hose|tank/;
const PLUG_SIGNS = /plug/;
const CHOKE_TESTS = /choke/;

/** One block of text with every fact helpers ask for; null when nothing is written about the bike. */
export function askFor(
  { shop, words: core }: EngineState,
  { bike, language }: { readonly bike: string; readonly language: string },
): AskView | null {
  const told = shop.bikes.get(bike);
  if (told === undefined) return null;
  const words = sentencesIn(language)?.ask ?? ask;
  const say = storyWords(language, core);
  const story = bikeCase(shop, bike);
  const { description, now } = told;
  const name = description?.name ?? bike;
  const lines = (entries: readonly UsedEntry[]): string =>
    entries
      .slice(-MOST)
      .reverse()
      .map((entry) => words.onDay(new Date(entry.at).toISOString().slice(0, 10), sentenceOf(entry, say)))
      .join("\n   ");
  const tests = told.tests.map(({ entry }) => entry);
  const plugRides = told.rides
    .map(({ entry }) => entry)
    .filter(({ body }) => body.reports?.some(({ sign }) => PLUG_SIGNS.test(sign)));
  const plugTests = tests.filter(({ body }) => PLUG_SIGNS.test(body.test));
  const photos = told.entries.filter((entry) => entry.kind === "photo" && /plug/i.test(entry.body.of ?? ""));
  const changes = told.entries.filter(
    ({ kind }) => kind === "engine-changed" || kind === "setup-fitted" || kind === "fuel-used",
  );
  const before = told.setups.at(-2);
  const fitter = told.entries.findLast(({ kind }) => kind === "setup-fitted");
  const items = [
    [words.items.fitted, story.ok ? setupLines(story.value.now.setup, say).join("\n   ") : ""],
    [words.items.air, now.air === null ? place(description, say) : airWords(now.air.body, say)],
    [words.items.opening, lines([...told.rides.map(({ entry }) => entry), ...tests])],
    [words.items.fuel, now.fuel === null ? "" : fuelWords(now.fuel.body, say)],
    [words.items.before, lines(changes)],
    [words.items.mechanics, lines(told.checks)],
    [
      words.items.plug,
      joined([lines([...plugRides, ...plugTests]), photos.length > 0 && words.photos(photos.length)]),
    ],
    [words.items.choke, lines(tests.filter(({ body }) => CHOKE_TESTS.test(body.test)))],
    [words.items.carburetor, carburetor(description, say, words)],
    [words.items.float, float(told.checks, description, say, words)],
    [words.items.age, ""],
    [
      words.items.history,
      joined([
        fitter && personOf(fitter) && words.setUpBy(personOf(fitter)!),
        before && Object.keys(before.parts).length > 0 && words.wasBefore(setupWords(before.parts, say)),
      ]),
    ],
    [words.items.riding, joined([description?.use, description?.use && words.weight])],
  ] as const;
  const view = items.map(([title, answer]) => ({
    title,
    answer: answer === "" ? words.notKnown : answer,
    known: answer !== "",
  }));
  const engine = description?.engine;
  const head = joined([
    engine && say.strokes(engine.strokes),
    engine?.displacementCc !== undefined && say.cc(engine.displacementCc),
  ]);
  return {
    name,
    items: view,
    text: [
      words.heading(name),
      `${words.engine}: ${head === "" ? words.notKnown : head}`,
      "",
      ...view.map(({ title, answer }, i) => words.numbered(i + 1, title, answer)),
      "",
    ].join("\n"),
  };
}

type Told = NonNullable<ReturnType<EngineState["shop"]["bikes"]["get"]>>;

const joined = (parts: readonly (string | null | undefined | false)[]): string =>
  parts.filter(Boolean).join("; ");

const place = (description: Told["description"], say: Saying): string =>
  description?.place === undefined
    ? ""
    : airWords({ heightM: description.place.heightM, place: description.place.name }, say);

function carburetor(description: Told["description"], say: Saying, words: AskWords): string {
  const body = description?.carburetor;
  if (body === undefined) return "";
  const { maker, bore, screw } = body;
  return joined([
    maker,
    bore &&
      say.carburetor(
        bore.shape === "round" ? `${bore.diameterMm} mm` : `${bore.widthMm} × ${bore.heightMm} mm`,
      ),
    screw !== undefined && screw !== "unknown" && say.screwSide(screw),
    words.genuine,
  ]);
}

function float(
  checks: Told["checks"],
  description: Told["description"],
  say: Saying,
  words: AskWords,
): string {
  const vent = description?.carburetor?.bowlVent;
  return joined([
    ...checks.filter(({ body }) => FLOAT_CHECKS.test(body.check)).map((entry) => sentenceOf(entry, say)),
    vent && words.vent(vent),
  ]);
}
