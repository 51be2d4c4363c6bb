import { type Body, type Bore, type Engine, fromCubicCentimetre, fromMillimetre } from "@jetwright/core";
import type { CaseWarnings } from "./case-warning.ts";
import type { Description } from "./description.ts";

export type DescribedEngine = NonNullable<Description["engine"]>;
type Carburetor = NonNullable<Description["carburetor"]>;

/** The engine in SI. */
export function siEngine(engine: DescribedEngine): Engine {
  return {
    strokes: engine.strokes,
    displacement: engine.displacementCc === undefined ? null : fromCubicCentimetre(engine.displacementCc),
    acceleratorPump: engine.acceleratorPump ?? false,
    ...(engine.cylinders !== undefined && { cylinders: engine.cylinders }),
  };
}

function siBore(bore: NonNullable<Carburetor["bore"]>): Bore {
  if (bore.shape === "round") return { shape: "round", diameter: fromMillimetre(bore.diameterMm) };
  const { shape, widthMm, heightMm } = bore;
  return { shape, width: fromMillimetre(widthMm), height: fromMillimetre(heightMm) };
}

/**
 * Millimetres of bore that an off-road engine of this size usually has, within about 15 %. Estimate:
 * two-strokes 3.2 √cc up to 38, four-strokes 2.4 √cc up to 41; 34 when the size is not known either.
 */
export function usualBoreMm(engine: DescribedEngine): number {
  if (engine.displacementCc === undefined) return 34;
  const [factor, most] = engine.strokes === 2 ? [3.2, 38] : [2.4, 41];
  return Math.max(12, Math.min(most, Math.round(factor * Math.sqrt(engine.displacementCc))));
}

/** The carburetor body in SI; what is not told is taken as usual for such an engine, and said. */
export function siBody(description: Description, engine: DescribedEngine, warnings: CaseWarnings): Body {
  const told = description.carburetor ?? {};
  let bore: Bore;
  if (told.bore === undefined) {
    const usual = usualBoreMm(engine);
    bore = { shape: "round", diameter: fromMillimetre(usual) };
    warnings.add({ code: "bore-assumed", given: { mm: usual } });
  } else bore = siBore(told.bore);
  const screw = told.screw ?? "unknown";
  const nozzle = told.nozzle ?? "unknown";
  return {
    bore,
    screwKind: screw === "unknown" ? (engine.strokes === 2 ? "air" : "fuel") : screw,
    nozzle: nozzle === "unknown" ? (engine.strokes === 2 ? "primary" : "bleed") : nozzle,
    seatToJet: told.seatToJetMm === undefined ? null : fromMillimetre(told.seatToJetMm),
    idleLift: told.idleLiftMm === undefined ? null : fromMillimetre(told.idleLiftMm),
    bowlVent: told.bowlVent ?? "free air",
  };
}
