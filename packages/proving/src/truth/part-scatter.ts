import { Chance } from "../chance.ts";
import type { Bike } from "./bike.ts";

/**
 * Hole of the jet with that number on this bike's bench, m²: what the number says, this maker's own scale, and what
 * the one jet in hand is off by. The same jet is always the same hole.
 */
export function holeOf(
  { seed, body, jetScatter }: Pick<Bike, "seed" | "body" | "jetScatter">,
  place: "main" | "pilot",
  number: number,
): number {
  const bore = body.numbering === "bore" ? number * 1e-5 : Math.sqrt(number / 100) * 1e-3;
  const one = new Chance(seed, "jet", place, number).normal(0, jetScatter);
  return (Math.PI / 4) * bore * bore * Math.exp(Math.max(-0.05, Math.min(0.05, one)));
}
