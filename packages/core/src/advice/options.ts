import type { Situation } from "../metering/situation.ts";
import type { Drawer } from "../parts/drawer.ts";
import { type Jet, jetArea } from "../parts/jet.ts";
import { sameMaker } from "../parts/jet-compare.ts";
import { typicalSteps } from "../parts/jet-steps.ts";
import { type Known, known } from "../parts/known.ts";
import type { Needle } from "../parts/needle.ts";
import type { Setup } from "../parts/setup.ts";
import type { Metre } from "../units/quantity.ts";
import type { LabourPart } from "./case.ts";

/** One way to fill one place of the carburetor, the fitted part included (then `changes` is empty). */
export interface Option {
  readonly changes: readonly LabourPart[];
  /** Of those, the ones that are not in the drawer. */
  readonly toBuy: readonly LabourPart[];
  readonly fit: (setup: Setup) => Setup;
}

export interface Options {
  /** Places that act on the main branch: main jet, needle with clip, needle jet, slide. */
  readonly mainBranch: readonly (readonly Option[])[];
  /** Places that act on the pilot branch: pilot jet, screw. */
  readonly pilotBranch: readonly (readonly Option[])[];
}

export const STAY: Option = { changes: [], toBuy: [], fit: (setup) => setup };

/** Jets further away than this in area are not a next step. */
const WIDEST_STEP = 1.3;
/** Steps to either side that can be bought. */
const STEPS_TO_BUY = 4;
/** Beyond these turns out the pilot is the wrong size: a screw is not left there. Setting guides give 1 to 2½, at most ¾ to 3. */
const TURNS = { least: 0.75, most: 2.75, step: 0.25 };

/** Everything that can be fitted next, from the drawer and from what can be bought. A part that is not known is left alone. */
export function optionsFor({ setup }: Situation, drawer: Drawer): Options {
  return {
    mainBranch: [
      jetOptions(setup.main, drawer.mains, "main"),
      needleOptions(setup, drawer),
      needleJetOptions(setup, drawer),
      slideOptions(setup, drawer),
    ],
    pilotBranch: [jetOptions(setup.pilot, drawer.pilots, "pilot"), screwOptions(setup)],
  };
}

/** The same without the main jets that are smaller than the fitted one. */
export function withoutLeanerMain(options: Options, { setup }: Situation): Options {
  const fitted = setup.main.part;
  if (fitted === null) return options;
  const [mains, ...others] = options.mainBranch;
  const kept = mains!.filter((option) => jetArea(option.fit(setup).main.part!) >= jetArea(fitted));
  return { ...options, mainBranch: [kept, ...others] };
}

function jetOptions(fitted: Known<Jet>, stocks: Drawer["mains"], place: "main" | "pilot"): readonly Option[] {
  const now = fitted.part;
  if (now === null) return [STAY];
  const jets = new Map<number, { readonly jet: Jet; readonly owned: boolean }>();
  const area = jetArea(now);
  const near = (jet: Jet): boolean => {
    const ratio = jetArea(jet) / area;
    return jet.number !== now.number && ratio < WIDEST_STEP && ratio > 1 / WIDEST_STEP;
  };
  const step = typicalSteps(now, place)[0];
  for (let k = -STEPS_TO_BUY; k <= STEPS_TO_BUY; k++) {
    const number = Math.round((now.number + k * step) * 10) / 10;
    if (number > 0 && near({ ...now, number })) jets.set(number, { jet: { ...now, number }, owned: false });
  }
  for (const { part, count } of stocks) {
    if (count > 0 && part.numbering === now.numbering && sameMaker(part, now) && near(part)) {
      jets.set(part.number, { jet: part, owned: true });
    }
  }
  const others = [...jets.values()].sort((a, b) => a.jet.number - b.jet.number);
  return [
    STAY,
    ...others.map(({ jet, owned }) => ({
      changes: [place],
      toBuy: owned ? [] : [place],
      fit: (setup: Setup): Setup => ({ ...setup, [place]: known(jet) }),
    })),
  ];
}

function needleOptions(setup: Setup, drawer: Drawer): readonly Option[] {
  const { needle, clip } = setup;
  if (clip.part === null) return [STAY];
  const options: Option[] = [STAY];
  const grooves = (part: Needle | null): readonly number[] =>
    Array.from({ length: part?.grooves ?? 5 }, (_, i) => i + 1);
  for (const groove of grooves(needle.part)) {
    // One groove at a time: two are worth a sixth of the fuel at a quarter throttle.
    if (Math.abs(Math.abs(groove - clip.part) - 1) > 0.25) continue;
    options.push({ changes: ["clip"], toBuy: [], fit: (s) => ({ ...s, clip: known(groove) }) });
  }
  const profile = needle.part?.profile;
  if (!profile) return options;
  for (const { part, count } of drawer.needles) {
    if (count <= 0 || part.profile === null || part.marks === needle.part!.marks) continue;
    for (const groove of grooves(part)) {
      options.push({
        changes: ["needle"],
        toBuy: [],
        fit: (s) => ({ ...s, needle: known(part), clip: known(groove) }),
      });
    }
  }
  return options;
}

export function needleJetOptions(setup: Setup, drawer: Drawer): readonly Option[] {
  if (setup.needleJet.part === null || !setup.needle.part?.profile) return [STAY];
  return [
    STAY,
    ...otherSizes(drawer.needleJets, setup.needleJet.part, "needleJet", (s, size) => ({
      ...s,
      needleJet: known(size),
    })),
  ];
}

export function slideOptions(setup: Setup, drawer: Drawer): readonly Option[] {
  if (setup.cutaway.part === null) return [STAY];
  return [
    STAY,
    ...otherSizes(drawer.slides, setup.cutaway.part, "slide", (s, size) => ({ ...s, cutaway: known(size) })),
  ];
}

function otherSizes(
  stocks: Drawer["slides"],
  fitted: Metre,
  part: LabourPart,
  withSize: (setup: Setup, size: Metre) => Setup,
): readonly Option[] {
  return stocks
    .filter((stock) => stock.count > 0 && Math.abs(stock.part - fitted) > 1e-7)
    .map((stock) => ({ changes: [part], toBuy: [], fit: (setup) => withSize(setup, stock.part) }));
}

export function screwOptions({ screw }: Setup): readonly Option[] {
  if (screw.part === null) return [STAY];
  const { kind, turnsOut } = screw.part;
  const options: Option[] = [STAY];
  for (let turns = TURNS.least; turns <= TURNS.most + 1e-9; turns += TURNS.step) {
    if (Math.abs(turns - turnsOut) < 0.1) continue;
    const to = turns;
    options.push({
      changes: ["screw"],
      toBuy: [],
      fit: (s) => ({ ...s, screw: known({ kind, turnsOut: to }) }),
    });
  }
  return options;
}
