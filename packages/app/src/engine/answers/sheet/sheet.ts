import {
  nextStep,
  type Outcome,
  type Setup,
  SIGN_SECTIONS,
  type SignId,
  type Situation,
  type Step,
  toCelsius,
  toHectopascal,
} from "@jetwright/core";
import { bikeCase, type Description, shopDrawer, situationOfRecord } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { carried } from "../carried/carried.ts";
import { type PartRow, partRows } from "../part-rows.ts";
import { fuelWords } from "../story/sentence.ts";
import { storyWords } from "../story/story-words.ts";
import { type ChartUnits, type SmallChart, smallChart } from "./small-chart.ts";
import { type StaysRight, staysRight } from "./stays-right.ts";

export interface SheetAir {
  readonly celsius: number;
  readonly hectopascal: number;
  readonly density: number;
  /** As noted, metres; null when only the pressure is known. */
  readonly heightM: number | null;
  readonly place: string | null;
  /** When it was noted; null when nobody noted the air and the usual one is taken. */
  readonly notedAt: number | null;
}

/** Everything on the printed page of a bike. */
export interface Sheet {
  readonly name: string;
  readonly description: Description;
  readonly screw: Setup["body"]["screwKind"];
  readonly parts: readonly PartRow[];
  readonly fittedAt: number | null;
  readonly air: SheetAir;
  /** Null when nobody noted the fuel. */
  readonly fuel: string | null;
  /** When somebody marked this very setup as right; null when nobody did. */
  readonly markedAt: number | null;
  readonly range: Outcome<StaysRight>;
  readonly chart: Outcome<SmallChart>;
  /** What the tool would do next, and which checks come after it. */
  readonly next: Pick<Step, "kind" | "title" | "topThrottle"> | null;
  readonly checks: readonly string[];
  /** What ends the ride, in the words of the catalogue. */
  readonly stops: readonly string[];
  /** What to mind, in full. */
  readonly cautions: readonly string[];
  /** The records that carry this setup to another phone, one line each. */
  readonly carried: readonly string[];
}

export type SheetRefusal = "no-such-bike" | "bike-not-described";

/** The page for the rider; refuses a bike that is not in the log or whose engine nobody described. */
export function sheetOf(
  { shop, words }: EngineState,
  { bike, units, language }: { readonly bike: string; readonly units: ChartUnits; readonly language: string },
): Outcome<Sheet, SheetRefusal> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  const told = shop.bikes.get(bike)!;
  const description = told.description!;
  const marked = told.knownGood.findLast(({ moment }) => moment.setup === told.now.setup) ?? null;
  const rightAt = marked === null ? null : situationOfRecord(shop, bike, marked.entry.id);
  const base: Situation = rightAt?.ok ? rightAt.value : story.value.now;
  const moment = marked?.moment ?? told.now;
  const advice = nextStep(story.value, words);
  const steps = advice.ok ? [advice.value.step, ...advice.value.others] : [];
  const [first] = steps;
  return {
    ok: true,
    value: {
      name: description.name ?? bike,
      description,
      screw: base.setup.body.screwKind,
      parts: partRows(story.value.now.setup, words),
      fittedAt: Number.isFinite(told.now.setup.at) ? told.now.setup.at : null,
      air: {
        celsius: toCelsius(base.air.temperature),
        hectopascal: toHectopascal(base.air.pressure),
        density: base.air.density,
        heightM: moment.air?.body.heightM ?? description.place?.heightM ?? null,
        place: moment.air?.body.place ?? description.place?.name ?? null,
        notedAt: moment.air?.at ?? null,
      },
      fuel: moment.fuel === null ? null : fuelWords(moment.fuel.body, storyWords(language, words)),
      markedAt: marked?.entry.at ?? null,
      range: staysRight(base),
      chart: smallChart(base, shopDrawer(shop), units),
      next:
        first === undefined ? null : { kind: first.kind, title: first.title, topThrottle: first.topThrottle },
      checks: steps
        .filter(({ kind }) => kind === "check")
        .slice(0, 3)
        .map(({ title }) => title),
      stops: STOPS.map((id) => words.signs[id].words),
      cautions: (description.engine?.strokes === 2 ? TWO_STROKE_CAUTIONS : FOUR_STROKE_CAUTIONS).map(
        (id) => words.cautions[id],
      ),
      carried: carried(shop, bike, story.value.now.setup),
    },
  };
}

const LAST_CAUTIONS = ["runaway", "hand-over", "makers-manual"] as const;
const TWO_STROKE_CAUTIONS = ["seizure-at-full-throttle", ...LAST_CAUTIONS] as const;
const FOUR_STROKE_CAUTIONS = ["lean-damage", ...LAST_CAUTIONS] as const;

/** Signs that end the ride and that a rider can notice; those of parts seen on the bench are left out. */
const STOPS: readonly SignId[] = SIGN_SECTIONS.filter(({ id }) => id !== "parts-seen")
  .flatMap(({ signs }) => signs)
  .filter(({ stop }) => stop)
  .map(({ id }) => id);
