import type { Sign } from "../belief/catalogue.ts";
import { sameMixture } from "../belief/same-mixture.ts";
import { OPENINGS } from "../units/opening.ts";
import type { BikeCase } from "./case.ts";
import { feelsTheSame, situationKey } from "./situation-key.ts";
import { type Band, bandOf } from "./stretch-words.ts";
import { testById } from "./tests-on-engine.ts";
import type { Weighing } from "./weighing.ts";

/** The band that holds most of a stretch; of equal ones the lower. */
export function bandOfStretch(stretch: readonly number[]): Band {
  const held: Record<Band, number> = { bottom: 0, middle: 0, top: 0 };
  OPENINGS.forEach((opening, i) => {
    held[bandOf(opening)] += stretch[i]!;
  });
  const most = Math.max(held.bottom, held.middle, held.top) - 1e-9;
  return held.bottom >= most ? "bottom" : held.middle >= most ? "middle" : "top";
}

/** Evidence from before this counts for no complaint: a fresh start, or the last mend. */
export const since = ({ freshStartAt, checks }: BikeCase): number =>
  Math.max(
    freshStartAt ?? -Infinity,
    ...checks.filter(({ found }) => found === "mended").map(({ at }) => at),
  );

/** What was noticed with the setup and air of now, since the last mend: by band, trouble and signs of health. */
export interface Noticed {
  readonly trouble: ReadonlySet<Band>;
  readonly health: ReadonlySet<Band>;
  /** Bands of which anything at all was reported. */
  readonly reported: ReadonlySet<Band>;
}

/** The situations ridden or tested that feel the same as now, by key. */
export const feltAsNow = (story: BikeCase): ReadonlySet<string> =>
  new Set(
    [...story.rides, ...story.tests, ...(story.sounds ?? [])]
      .filter(({ situation }) => feelsTheSame(situation, story.now))
      .map(({ situation }) => situationKey(situation)),
  );

export function noticedNow(weighing: Known): Noticed {
  const before = remembered.get(weighing);
  if (before !== undefined) return before;
  const noticed = noticedIn(weighing);
  remembered.set(weighing, noticed);
  return noticed;
}

type Known = Pick<Weighing, "story" | "belief" | "present">;

/** Every candidate asks it of the same weighing, which nothing changes. */
const remembered = new WeakMap<Known, Noticed>();

function noticedIn({ story, belief, present }: Known): Noticed {
  const from = since(story);
  const trouble = new Set<Band>();
  const health = new Set<Band>();
  const reported = new Set<Band>();
  for (const { observation } of belief.sites) {
    if (observation.kind !== "sign" || observation.at <= from) continue;
    const { stretch } = observation;
    if (!sameMixture(observation, { stretch, shift: present.shift })) continue;
    const band = bandOfStretch(stretch);
    const says = verdictOf(observation.sign, observation.seen);
    reported.add(band);
    if (says === "trouble") trouble.add(band);
    if (says === "health") health.add(band);
  }
  return { trouble, health, reported };
}

/**
 * What a sign says by itself. Trouble: a wrong mixture or a fault gives it at least twice as often as a right one, or
 * a sign of health was looked for and not there. Health: it is a sign of health, or a right mixture gives it at least
 * twice as often as a wrong one and no fault does. Else nothing: a sign of trouble that is not there proves no health.
 */
export function verdictOf(
  { chance: { rich, right, lean }, faults, healthy }: Pick<Sign, "chance" | "faults" | "healthy">,
  seen: boolean,
): "health" | "trouble" | null {
  if (healthy) return seen ? "health" : "trouble";
  if (!seen) return null;
  const faulty = Object.values(faults).map((chance) => chance ?? 0);
  const wrong = Math.max(rich, lean);
  if (faulty.length === 0 && right >= 2 * wrong) return "health";
  return Math.max(wrong, ...faulty) >= 2 * right ? "trouble" : null;
}

/** True when the screw was swept on the parts and air of now and its best was not in the middle: the screw alone is no cure. */
export function sweptWithoutCure(story: BikeCase): boolean {
  const from = since(story);
  return story.tests.some(
    ({ at, test, outcome, situation }) =>
      at > from && testById(test)?.screw && outcome !== "middle" && feelsTheSame(situation, story.now),
  );
}
