import {
  type DrawerQuestion,
  type DrawerSpace,
  drawerSpace,
} from "../packages/core/src/advice/drawer-search/drawer-space.ts";
import { everySetup } from "../packages/core/src/advice/drawer-search/every-setup.ts";
import { bestSetups, newTally } from "../packages/core/src/advice/drawer-search/search-drawer.ts";
import {
  combinationsOf,
  type DrawerSize,
  type Needles,
  trialBelief,
  trialPlaces,
} from "../packages/core/src/advice/drawer-search/trial-drawer.ts";
import { LEAN_CHANCE } from "../packages/core/src/advice/loss.ts";
import { FOUND } from "../packages/core/src/advice/test-stories.ts";
import { dryAir } from "../packages/core/src/metering/test-situations.ts";
import type { Bench } from "./bench-shape.ts";

const WHOLE: DrawerSize = { needles: 400, clips: 5, mains: 40, pilots: 24, screws: 12, slides: 5 };
/** Parts of the belief: faults, each on several sides of the mixture. A real log keeps 20 to 100. */
const PARTS = 60;
const LISTED = 20;

interface Case {
  readonly size: DrawerSize;
  readonly needles?: Needles;
  readonly parts?: number;
  readonly width?: number;
  readonly leanChance?: number;
  readonly countMinutes?: boolean;
}

/** Parts and belief, ready to be asked about. */
function questionFor({
  size,
  needles,
  parts = PARTS,
  width = 1,
  leanChance = LEAN_CHANCE,
  countMinutes = false,
}: Case): DrawerQuestion {
  return {
    belief: trialBelief(parts, width, 3),
    reference: FOUND,
    now: { ...FOUND, air: dryAir(1.1) },
    places: trialPlaces(size, needles),
    leanChance,
    countMinutes,
    minutes: {},
  };
}

function spaceFor(question: DrawerQuestion): DrawerSpace {
  const made = drawerSpace(question);
  if (!made.ok) throw new Error(made.detail);
  return made.value;
}

const millions = (size: DrawerSize): string => `${(combinationsOf(size) / 1e6).toPrecision(4)} M`;

/** The drawer made ready and searched, as the app does it for each new air. */
const searching = (name: string, given: Case) => ({
  name,
  make: () => {
    const question = questionFor(given);
    return () => void bestSetups(spaceFor(question), LISTED);
  },
});

const WHOLE_ROW = `${millions(WHOLE)} setups, ${PARTS} parts of belief`;
const FEW: DrawerSize = { ...WHOLE, needles: 4 };
const SOME: DrawerSize = { ...WHOLE, needles: 40 };
const MANY: DrawerSize = { ...WHOLE, needles: 2000 };
const drawers = [FEW, SOME, MANY].map((size) => searching(`${millions(size)} setups`, { size }));
const widths = [0.15, 0.4, 1.6].map((width) =>
  searching(`belief ${width} times as wide`, { size: WHOLE, width }),
);
const parts = [1, 5, 20, 200].map((count) =>
  searching(`${count} ${count === 1 ? "part" : "parts"} of belief`, { size: WHOLE, parts: count }),
);
const others = [
  searching("without the lean limit", { size: WHOLE, leanChance: 1 }),
  searching("minutes counted", { size: WHOLE, countMinutes: true }),
  searching("needles all near twins", { size: WHOLE, needles: "near twins" }),
  searching("needles that never matter", { size: WHOLE, needles: "never matter" }),
];
const all = [...drawers, ...widths, ...parts, ...others];

export const searchBench: Bench = {
  topic: "search: the best 20 setups of a drawer",
  runs: 5,
  rows: [searching(WHOLE_ROW, { size: WHOLE }), ...all],
  ratios: all.map(({ name }) => [name, WHOLE_ROW] as const),
};

const PIECE: DrawerSize = { needles: 40, clips: 5, mains: 20, pilots: 12, screws: 6, slides: 2 };
const SURE = 1;
const pair = (name: string, given: Case) => {
  let space: DrawerSpace | null = null;
  const lists: Record<string, string> = {};
  const get = (): DrawerSpace => {
    space ??= spaceFor(questionFor(given));
    return space;
  };
  const plain = `every one of ${name}`;
  const search = `search of ${name}`;
  const rows = [
    {
      name: search,
      make: () => () => {
        lists.search = JSON.stringify(bestSetups(get(), LISTED));
      },
    },
    {
      name: plain,
      make: () => () => {
        lists.plain = JSON.stringify(everySetup(get(), LISTED));
      },
    },
  ];
  const note = () => `${name}: the lists are ${lists.search === lists.plain ? "the same" : "NOT THE SAME"}`;
  return { rows, ratio: [plain, search] as const, note };
};
const piece = pair(`${millions(PIECE)} setups, ${PARTS} parts of belief`, { size: PIECE });
const whole = pair(`${millions(WHOLE)} setups, 1 part of belief, no lean limit`, {
  size: WHOLE,
  parts: SURE,
  leanChance: 1,
});

function memory(): readonly string[] {
  const tally = newTally();
  bestSetups(spaceFor(questionFor({ size: WHOLE })), LISTED, undefined, tally);
  const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);
  return [
    `${megabytes(tally.bytes)} MB of tables at most; ${tally.opened} of ${tally.pairs} pairs opened, ${tally.floors} floors, ${tally.losses} losses in full`,
    `${megabytes(process.resourceUsage().maxRSS * 1024)} MB peak of the whole process, Node and the benches before it included`,
  ];
}

export const wholeDrawerBench: Bench = {
  topic: "search against plain enumeration, each whole, once",
  runs: 1,
  rows: [...piece.rows, ...whole.rows],
  ratios: [piece.ratio, whole.ratio],
  notes: () => [piece.note(), whole.note(), ...memory()],
};
