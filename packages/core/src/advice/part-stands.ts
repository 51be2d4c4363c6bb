import type { Situation } from "../metering/situation.ts";
import type { Setup } from "../parts/setup.ts";
import { toMillimetre } from "../units/convert.ts";
import type { CoreWords } from "../words/core-words.ts";
import type { PartMove, PartStand } from "../words/part-stand.ts";
import type { PartChange } from "./advice.ts";
import type { LabourPart } from "./case.ts";
import type { Candidate } from "./search.ts";

/** What a change is told from. */
type Change = Pick<Candidate, "situation" | "changes" | "toBuy">;

/** How a part stands in a setup, as figures for the words of a language. */
export function partStand(part: LabourPart, setup: Setup): PartStand {
  switch (part) {
    case "main":
    case "pilot":
      return { part, number: setup[part].part?.number ?? null };
    case "clip":
      return { part, groove: setup.clip.part };
    case "needle":
      return { part, marks: setup.needle.part?.marks ?? null, groove: setup.clip.part };
    case "slide":
      return { part, cutawayMm: setup.cutaway.part === null ? null : toMillimetre(setup.cutaway.part) };
    case "screw":
      return { part, kind: setup.body.screwKind, turns: setup.screw.part?.turnsOut ?? null };
    case "needleJet":
      return { part, boreMm: setup.needleJet.part === null ? null : toMillimetre(setup.needleJet.part) };
  }
}

/** The parts of a change, before and after. */
export const partMoves = (now: Situation, candidate: Change): readonly PartMove[] =>
  candidate.changes.map((part) => ({
    from: partStand(part, now.setup),
    to: partStand(part, candidate.situation.setup),
  }));

export function partChanges(now: Situation, candidate: Change, words: CoreWords): readonly PartChange[] {
  return partMoves(now, candidate).map(({ from, to }) => ({
    part: from.part,
    from: words.parts.value(from),
    to: words.parts.value(to),
    inDrawer: !candidate.toBuy.includes(from.part),
  }));
}
