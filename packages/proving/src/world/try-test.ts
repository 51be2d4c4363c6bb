import { LIFTS, type Parts } from "../truth/bike.ts";
import { stepped } from "../truth/sizes.ts";
import { perceive } from "./perceive.ts";
import { over, STRETCHES, type StretchName } from "./stretches.ts";
import type { Throttle } from "./throttle.ts";
import type { World } from "./world.ts";

/** What came out of a test on the running engine; null where it could not be made or told nothing. */
export interface Tried {
  readonly outcome: string;
  readonly numbers: Readonly<Record<string, number>>;
}

const at = (values: readonly number[], lift: number): number =>
  values[LIFTS.indexOf(lift as (typeof LIFTS)[number])]!;

/**
 * Makes a test of the tool's list on this bike: the outcome follows from the true mixture and the fault, seen through
 * this rider's senses.
 */
export function tryTest(
  world: World,
  id: string,
  opening: number | null,
  throttle: Throttle,
  signOf: (outcome: string) => string | null,
  outcomes: readonly string[],
): Tried | null {
  const { rider } = world;
  const chance = world.chance("test", id, opening ?? -1);
  const seems = world.seems(throttle);
  const here = (lift: number): number => at(seems, lift) - rider.taste + chance.normal(0, 0.7 * rider.noise);
  const answer = (outcome: string, numbers: Tried["numbers"] = {}): Tried => ({ outcome, numbers });
  const careful = (name: StretchName): Tried | null => {
    const stretch = STRETCHES.find((each) => each.name === name)!;
    const { strokes } = world.drawn.bike.engine;
    const { sign, feel, strength } = perceive(chance, rider, stretch, strokes, seems, 3);
    const says = stretch.says(strokes);
    const wanted = sign ?? (Math.abs(strength) < 1 ? says.right[0]! : says[feel][0]!);
    const exact = outcomes.find((outcome) => signOf(outcome) === wanted);
    if (exact !== undefined) return answer(exact);
    const kin = outcomes.find((outcome) => says[feel].includes(signOf(outcome) ?? ""));
    return kin === undefined ? null : answer(kin);
  };
  const richer = (parts: Partial<Parts>): number => {
    const before = at(seems, opening ?? 0) - rider.taste;
    const after = at(world.seems(throttle, { ...world.parts, ...parts }), opening ?? 0) - rider.taste;
    return Math.abs(before) - Math.abs(after) + chance.normal(0, 0.6 * rider.noise);
  };
  const betterOr = (gain: number): string => (gain > 0.015 ? "better" : gain < -0.015 ? "worse" : "same");
  const { body } = world.drawn.bike;
  const towardFuel = body.screw === "air" ? -0.5 : 0.5;
  switch (id) {
    case "idle-hold":
      return careful("idle");
    case "chop-warm":
      return careful("closing");
    case "quick-opening":
      return careful("snap");
    case "roll-on":
    case "roll-on-four-stroke":
      return careful(opening !== null && opening < 0.3 ? "light" : "middle");
    case "full-pull":
      return careful("top");
    case "chop-hot": {
      const closing = STRETCHES.find(({ name }) => name === "closing")!;
      const warm = over(closing, seems) - rider.taste;
      const hot =
        over(closing, world.mixtureWith(world.broken, 1).error(world.parts)) -
        rider.taste +
        chance.normal(0, 0.5 * rider.noise);
      const hangs = -closing.noticed * rider.dull;
      if (hot < hangs) return answer(warm >= hangs ? "only-hot" : warm - hot > 0.02 ? "grows" : "same");
      return answer("no-hang");
    }
    case "slow-versus-fast-opening": {
      if (world.broken?.fault === "accelerator-pump")
        return answer(chance.of(0.85) ? "fast-only" : "both-clean");
      return answer(here(1 / 8) < -0.05 * rider.dull ? "both-bog" : "both-clean");
    }
    case "touch-of-choke": {
      const place = opening ?? 1 / 8;
      const added = 0.16 - 0.4 * place;
      const error = here(place);
      const gain = Math.abs(error) - Math.abs(error + added);
      return answer(gain > 0.02 ? "better" : gain < -0.02 ? "worse" : "no-change");
    }
    case "half-turn-for-the-hang": {
      if (["slide-or-cable", "idle-stop", "air-leak"].includes(world.broken?.fault ?? "") && chance.of(0.8))
        return answer("same");
      const closing = STRETCHES.find(({ name }) => name === "closing")!;
      const turned = over(
        closing,
        world.seems(throttle, { ...world.parts, turns: Math.max(0.1, world.parts.turns + towardFuel) }),
      );
      return answer(
        turned - rider.taste + chance.normal(0, 0.6 * rider.noise) > -closing.noticed * rider.dull
          ? "gone"
          : "same",
      );
    }
    case "screw-sweep-air":
    case "screw-sweep-fuel":
      return sweep(world, chance.normal(0, 0.12), chance.normal(0, 0.006));
    case "tap-off-run-down": {
      const error = here(opening ?? 0);
      return answer(error > 0.045 * rider.dull ? "clears" : "no-clearing");
    }
    case "roll-off": {
      const error = 0.7 * here(1) + 0.3 * here(7 / 8);
      return answer(
        error < -0.045 * rider.dull
          ? "picks-up"
          : error > 0.045 * rider.dull
            ? "tiny-cut"
            : error < -0.02
              ? "never"
              : "at-80",
      );
    }
    case "roll-off-four-stroke":
      return answer(here(1) < -0.045 * rider.dull ? "picks-up" : "eases");
    case "choke-flick-at-full": {
      const error = here(1);
      const gain = Math.abs(error) - Math.abs(error + 0.07);
      return answer(gain > 0.02 ? "higher" : gain < -0.035 ? "lower" : "no-change");
    }
    case "plug-look-part":
    case "plug-look-full": {
      const error =
        at(seems, opening ?? 1) +
        chance.normal(0, 0.035) +
        (world.broken?.fault === "plug-heat-range" ? 0.1 * world.broken.way : 0);
      if (error < -0.14 && chance.of(0.5)) return answer("specks");
      return answer(error < -0.05 ? "white" : error > 0.06 ? "black" : "tan");
    }
    case "one-step-more-fuel":
    case "one-step-more-fuel-top": {
      const { main, pilot, groove } = world.parts;
      const more: Partial<Parts> =
        (opening ?? 0) >= 0.75
          ? { main: stepped("main", body.numbering, main, 1) }
          : (opening ?? 0) >= 0.25
            ? { groove: groove + 1 }
            : { pilot: stepped("pilot", body.numbering, pilot, 1) };
      return answer(betterOr(richer(more)));
    }
    default:
      return null;
  }
}

/** The screw is turned through its way: where the idle is smoothest. */
function sweep(world: World, turnsNoise: number, feelNoise: number): Tried {
  const idle = STRETCHES.find(({ name }) => name === "idle")!;
  let best = { turns: 1.5, off: Infinity };
  let least = Infinity;
  let most = -Infinity;
  for (let turns = 0.25; turns <= 4; turns += 0.25) {
    const error =
      over(idle, world.seems("stay below 3/4", { ...world.parts, turns })) - world.bench.idlePeak + feelNoise;
    least = Math.min(least, error);
    most = Math.max(most, error);
    if (Math.abs(error) < best.off - 1e-4) best = { turns, off: Math.abs(error) };
  }
  if (most - least < 0.02 || best.off > 0.12) return { outcome: "no-difference", numbers: {} };
  const bestTurns = Math.max(0.25, Math.round((best.turns + turnsNoise) * 4) / 4);
  const outcome = bestTurns < 1 ? "nearly-closed" : bestTurns > 2.5 ? "far-out" : "middle";
  // At the end of its way the best was not found, only neared.
  const found = best.turns > 0.25 && best.turns < 4 && best.off < 0.03;
  return { outcome, numbers: found ? { bestTurns } : {} };
}
