import { checkById } from "@jetwright/core";
import type { Parts } from "../truth/bike.ts";
import { stepped } from "../truth/sizes.ts";
import { ON_THE_STAND, onTheStand, type Report, ride } from "../world/report-of.ts";
import { STRETCHES } from "../world/stretches.ts";
import type { World } from "../world/world.ts";
import type { Complaint } from "./symptoms.ts";

/** One step with the part that a chart names for a stretch, toward more fuel (+1) or less (−1). */
export function chartStep(world: World, stretch: Complaint["stretch"], way: 1 | -1): Partial<Parts> {
  const { body, needle } = world.drawn.bike;
  const { numbering } = body;
  const { main, pilot, groove, turns } = world.written;
  switch (stretch) {
    case "idle":
    case "closing": {
      const out = (turns ?? 1.5) + (body.screw === "air" ? -way : way) * 0.5;
      if (out >= 0.75 && out <= 2.75) return { turns: out };
      return { pilot: stepped("pilot", numbering, pilot ?? world.parts.pilot, way), turns: 1.5 };
    }
    case "snap":
      return { pilot: stepped("pilot", numbering, pilot ?? world.parts.pilot, way) };
    case "light":
    case "middle": {
      const to = (groove ?? world.parts.groove) + way;
      return to >= 1 && to <= needle.grooves
        ? { groove: to }
        : { pilot: stepped("pilot", numbering, pilot ?? world.parts.pilot, way) };
    }
    case "top":
      return { main: stepped("main", numbering, main ?? world.parts.main, way) };
  }
}

/**
 * Tries what was fitted: on the stand where the screw alone was turned, and what was said of the rest stays said; else on
 * a ride.
 */
export function tryOut(
  world: World,
  change: Partial<Parts>,
  before: readonly number[] | null,
  last: Report,
): Report {
  if (Object.keys(change).some((name) => name !== "turns")) return ride(world, "free", before);
  const stand = onTheStand(world, before);
  const { strokes } = world.drawn.bike.engine;
  const bottom = new Set(
    STRETCHES.filter(({ name }) => ON_THE_STAND.includes(name)).flatMap(({ says }) =>
      Object.values(says(strokes)).flat(),
    ),
  );
  return { said: [...last.said.filter(({ sign }) => !bottom.has(sign)), ...stand.said], felt: stand.felt };
}

/** Makes a look, and mends what it finds. */
export function lookAndMend(world: World, check: string): boolean {
  const { found, fault } = world.check(check, checkById(check)!.minutes);
  if (found === "faulty") world.mend(fault!);
  return found === "faulty";
}
