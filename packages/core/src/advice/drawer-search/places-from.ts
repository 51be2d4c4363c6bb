import { sizesSold } from "../../baseline/sizes-sold.ts";
import type { Situation } from "../../metering/situation.ts";
import type { Drawer } from "../../parts/drawer.ts";
import { type Jet, jetArea } from "../../parts/jet.ts";
import { sameMaker } from "../../parts/jet-compare.ts";
import { type Known, known } from "../../parts/known.ts";
import type { Needle } from "../../parts/needle.ts";
import type { Setup } from "../../parts/setup.ts";
import { needleJetOptions, type Option, STAY, screwOptions, slideOptions } from "../options.ts";
import type { DrawerPlaces } from "./drawer-space.ts";

/** Where parts may come from: the drawer alone, or jets that can be bought too. */
export type PartsFrom = "drawer" | "sold";

/** Jets further from the fitted one than this in area are not looked at among those sold. */
const WIDEST = 1.6;

/**
 * Everything that could be fitted, what is fitted first in each place: all jets of the fitted one's numbering and
 * maker, all measured needles in all their grooves, and not only what a next step would reach. A part that is not known
 * is left alone.
 */
export function placesFrom({ setup }: Situation, drawer: Drawer, from: PartsFrom): DrawerPlaces {
  const jets = needleJetOptions(setup, drawer);
  return {
    needles: needleAndClip(setup, drawer).flatMap((needle) => jets.map((jet) => both(needle, jet))),
    mains: jetsFor("main", setup.main, drawer.mains, from),
    slides: slideOptions(setup, drawer),
    pilots: jetsFor("pilot", setup.pilot, drawer.pilots, from),
    screws: screwOptions(setup),
  };
}

const both = (a: Option, b: Option): Option => ({
  changes: [...a.changes, ...b.changes],
  toBuy: [...a.toBuy, ...b.toBuy],
  fit: (setup) => b.fit(a.fit(setup)),
});

function jetsFor(
  place: "main" | "pilot",
  fitted: Known<Jet>,
  stocks: Drawer["mains"],
  from: PartsFrom,
): readonly Option[] {
  const now = fitted.part;
  if (now === null) return [STAY];
  const jets = new Map<number, { readonly jet: Jet; readonly owned: boolean }>();
  if (from === "sold") {
    for (const number of sizesSold(place, now.numbering)) {
      const ratio = jetArea({ ...now, number }) / jetArea(now);
      if (ratio < WIDEST && ratio > 1 / WIDEST) jets.set(number, { jet: { ...now, number }, owned: false });
    }
  }
  for (const { part, count } of stocks) {
    if (count > 0 && part.numbering === now.numbering && sameMaker(part, now)) {
      jets.set(part.number, { jet: part, owned: true });
    }
  }
  jets.delete(now.number);
  const others = [...jets.values()].sort((a, b) => a.jet.number - b.jet.number);
  return [
    STAY,
    ...others.map(
      ({ jet, owned }): Option => ({
        changes: [place],
        toBuy: owned ? [] : [place],
        fit: (setup: Setup): Setup => ({ ...setup, [place]: known(jet) }),
      }),
    ),
  ];
}

const grooves = (needle: Needle | null): readonly number[] =>
  Array.from({ length: needle?.grooves ?? 5 }, (_, i) => i + 1);

function needleAndClip({ needle, clip }: Setup, drawer: Drawer): readonly Option[] {
  if (clip.part === null) return [STAY];
  const own = grooves(needle.part)
    .filter((groove) => groove !== clip.part)
    .map((groove): Option => {
      return { changes: ["clip"], toBuy: [], fit: (setup) => ({ ...setup, clip: known(groove) }) };
    });
  const { part: fitted } = needle;
  const others = drawer.needles.flatMap(({ part, count }) => {
    const useful = count > 0 && fitted?.profile && part.profile !== null && part.marks !== fitted.marks;
    if (!useful) return [];
    return grooves(part).map(
      (groove): Option => ({
        changes: ["needle"],
        toBuy: [],
        fit: (setup) => ({ ...setup, needle: known(part), clip: known(groove) }),
      }),
    );
  });
  return [STAY, ...own, ...others];
}
