import type { Engine, Situation } from "@jetwright/core";
import { CaseWarnings } from "./case-warning.ts";
import type { Description } from "./description.ts";
import type { ShopState } from "./shop-state.ts";
import { siEngine } from "./si-engine.ts";
import { Situations } from "./situations.ts";

/** A setup somebody marked as right, in the air and on the fuel it was right in. */
export interface KnownGood {
  readonly record: string;
  readonly at: number;
  readonly bike: string;
  readonly description: Description;
  readonly engine: Engine;
  readonly situation: Situation;
}

/** The known-good setups of the whole shop, for the starting point of another bike; oldest first. */
export function knownGoodSetups(state: ShopState): KnownGood[] {
  const found: KnownGood[] = [];
  for (const story of state.bikes.values()) {
    const { description } = story;
    const engine = description?.engine;
    if (description === null || engine === undefined || story.knownGood.length === 0) continue;
    const situations = new Situations(story, description, engine, state.needles, new CaseWarnings());
    for (const { entry, moment } of story.knownGood) {
      const situation = situations.at(moment, entry.at);
      found.push({
        record: entry.id,
        at: entry.at,
        bike: story.id,
        description,
        engine: siEngine(engine),
        situation,
      });
    }
  }
  return found.sort((a, b) => a.at - b.at || (a.record < b.record ? -1 : 1));
}
