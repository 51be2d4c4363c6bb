import type { Advice, Step } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import type { BikeOfLog } from "../input/bike-of-log.ts";
import type { NextOutput } from "../output/next-output.ts";
import { airJson, mixtureJson, openingJson, problemJson, setupJson, warningJson } from "../output/shapes.ts";
import { percentOf } from "../print/mixture-words.ts";

/** The advice for programs. */
export function nextJson(of: BikeOfLog, advice: Advice): NextOutput {
  const { bike, story } = of;
  return {
    command: "next",
    v: 1,
    bike: bike.bike,
    name: story.description?.name ?? null,
    air: airJson(bike.now.air),
    fitted: setupJson(bike.now.setup),
    step: stepJson(advice.step, of),
    others: advice.others.map((step) => stepJson(step, of)),
    waiting: advice.waiting.map(({ changes, opening, ...rest }) => ({
      ...rest,
      changes: changes.map((change) => ({ ...change })),
      opening: openingJson(opening),
    })),
    mixture: advice.picture.map(mixtureJson),
    mixtureAfter: advice.pictureAfter?.map(mixtureJson) ?? null,
    suspects: [...advice.suspects],
    soundChance: advice.soundChance,
    twoSided: advice.twoSided.map(({ opening, rich, richPeak, leanPeak }) => ({
      opening: openingJson(opening),
      richChance: rich,
      richPercent: percentOf(richPeak),
      leanPercent: percentOf(leanPeak),
    })),
    leftOut: [...advice.leftOut],
    settled: advice.settled,
    warnings: bike.warnings.map(warningJson),
    problems: of.problems.map(problemJson),
  };
}

function stepJson(step: Step, of: BikeOfLog): NextOutput["step"] {
  const { situation, why, worth, cautions, how, tools, changes, looks = [], notes, ...rest } = step;
  return {
    ...rest,
    how: [...how],
    tools: [...tools],
    changes: changes.map((change) => ({ ...change })),
    looks: [...looks],
    notes: [...notes],
    why: why.map(({ record, text }) => ({ record, at: writtenAt(of, record), text })),
    worth: Number.isFinite(worth) ? worth : null,
    cautions: cautions.map((id) => ({ id, text: english.cautions[id] })),
    setupAfter: situation === null ? null : setupJson(situation.setup),
  };
}

function writtenAt({ story }: BikeOfLog, record: string): string | null {
  const at = story.entries.find(({ id }) => id === record)?.source.at;
  return typeof at === "string" ? at : null;
}
