import { type Drawer, fromMillimetre, type Jet, type Metre, type Needle, type Stock } from "@jetwright/core";
import { CaseWarnings } from "./case-warning.ts";
import type { CountedPart } from "./counted-drawer.ts";
import type { ShopState } from "./shop-state.ts";
import { type MeasuredNeedles, siNeedle } from "./si-needle.ts";
import { siJet } from "./si-setup.ts";

const byNumber = (a: Stock<Jet>, b: Stock<Jet>): number =>
  a.part.number - b.part.number || (a.part.maker < b.part.maker ? -1 : 1);
const bySize = (a: Stock<Metre>, b: Stock<Metre>): number => a.part - b.part;
const byMarks = (a: Stock<Needle>, b: Stock<Needle>): number => (a.part.marks < b.part.marks ? -1 : 1);

/** The drawer in SI, each kind of part from small to large. */
export function siDrawer(
  parts: readonly CountedPart[],
  measured: MeasuredNeedles,
  warnings: CaseWarnings,
): Drawer {
  const mains: Stock<Jet>[] = [];
  const pilots: Stock<Jet>[] = [];
  const needles: Stock<Needle>[] = [];
  const needleJets: Stock<Metre>[] = [];
  const slides: Stock<Metre>[] = [];
  for (const { part, count } of parts) {
    switch (part.part) {
      case "main":
        mains.push({ part: siJet(part, undefined, warnings), count });
        break;
      case "pilot":
        pilots.push({ part: siJet(part, undefined, warnings), count });
        break;
      case "needle":
        needles.push({ part: siNeedle(part, null, measured, warnings), count });
        break;
      case "needleJet":
        needleJets.push({ part: fromMillimetre(part.boreMm), count });
        break;
      case "slide":
        slides.push({ part: fromMillimetre(part.cutawayMm), count });
        break;
      default:
        part satisfies never;
    }
  }
  return {
    mains: mains.sort(byNumber),
    pilots: pilots.sort(byNumber),
    needles: needles.sort(byMarks),
    needleJets: needleJets.sort(bySize),
    slides: slides.sort(bySize),
  };
}

/** The shop's drawer in SI, for an answer that is not about one bike. */
export const shopDrawer = (state: ShopState): Drawer =>
  siDrawer(state.drawer, state.needles, new CaseWarnings());
