import { readFileSync } from "node:fs";
import { join } from "node:path";
import { nextStep } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { bikeCase, readLogText, replay } from "@jetwright/records";
import { priorGaussian } from "../packages/core/src/belief/prior.ts";
import { STATE_SIZE } from "../packages/core/src/belief/state.ts";
import { cholesky } from "../packages/core/src/numerics/matrix.ts";
import type { Bench } from "./bench-shape.ts";
import { ROOT } from "./run-step.ts";

const demo = readFileSync(join(ROOT, "demo/shop.jsonl"), "utf8");

/** The story of one bike of the example shop told again and again, other settings each time, until it has 500 records. */
function longLog(): string {
  const lines = demo.trimEnd().split("\n");
  const own = lines
    .map((line) => JSON.parse(line) as Record<string, unknown>)
    .filter(({ bike }) => bike === "bramble");
  const out = [...lines.filter((line) => !line.includes('"bike":"bramble"'))].slice(0, 40);
  for (let turn = 0; out.length < 500; turn++) {
    for (const record of own) {
      const day = String(1 + (turn % 28)).padStart(2, "0");
      const at = String(record.at).replace(/^\d{4}-\d{2}-\d{2}/, `20${27 + Math.floor(turn / 28)}-01-${day}`);
      const body = record.body as Record<string, unknown>;
      const fitted =
        record.kind === "setup-fitted"
          ? { ...body, screw: { turnsOut: 1 + (turn % 8) / 8, how: "measured" } }
          : body;
      out.push(
        JSON.stringify({
          ...record,
          id: `${record.id}-${turn}`,
          at,
          body: { ...fitted, against: undefined },
        }),
      );
      if (out.length >= 500) break;
    }
  }
  return out.join("\n");
}

const YARDSTICK = "2000 triangles of a 17 by 17 matrix";
const DEMO = "next step for the demo bike, from its case";
const READ = "500 records: read";
const REPLAY = "500 records: replay and one bike's case";
const UPDATE = "500 records: replay, case, belief and next step";

const caseOf = (text: string) => {
  const made = bikeCase(replay(readLogText(text).entries), "bramble");
  if (!made.ok) throw new Error(made.detail);
  return made.value;
};

export const adviceBench: Bench = {
  topic: "advice",
  rows: [
    {
      name: YARDSTICK,
      make: () => {
        const { covariance } = priorGaussian();
        return () => {
          for (let i = 0; i < 2000; i++) cholesky(covariance, STATE_SIZE);
        };
      },
    },
    {
      name: DEMO,
      make: () => {
        const story = caseOf(demo);
        return () => void nextStep(story, english);
      },
    },
    {
      name: READ,
      make: () => {
        const text = longLog();
        return () => void readLogText(text);
      },
    },
    {
      name: REPLAY,
      make: () => {
        const { entries } = readLogText(longLog());
        return () => void bikeCase(replay(entries), "bramble");
      },
    },
    {
      name: UPDATE,
      make: () => {
        const { entries } = readLogText(longLog());
        return () => {
          const made = bikeCase(replay(entries), "bramble");
          if (made.ok) nextStep(made.value, english);
        };
      },
    },
  ],
  ratios: [
    [DEMO, YARDSTICK],
    [UPDATE, DEMO],
    [UPDATE, REPLAY],
    [UPDATE, YARDSTICK],
  ],
};
