import type { Sign } from "../belief/catalogue.ts";
import type { Observation } from "../belief/observation.ts";
import { signById } from "../belief/signs/all.ts";
import { stretchCentre, stretchOf } from "../belief/state.ts";
import { exp } from "../numerics/elementary.ts";
import type { Shift } from "../units/circuit.ts";
import type { SoundResult } from "./case.ts";
import { situationKey } from "./situation-key.ts";

/**
 * A measured figure and the sign it stands for: half of people would call it that at `half`, and nearly all or
 * nearly none some `width` away. The limits are trade practice and were never held against real engines, so even a
 * clear figure moves a belief less than a careful rider's word.
 */
interface Heard {
  readonly figure: string;
  readonly sign: string;
  readonly half: number;
  readonly width: number;
}

/**
 * What of a sound counts at all. Left out on purpose: the delay of a snap, which rich and lean both give; skipping,
 * which is normal at idle, on a closing throttle and at full throttle without load; anything else at no load.
 */
const HEARD: readonly Heard[] = [
  { figure: "hangSeconds", sign: "hangs-after-closing", half: 0.7, width: 0.15 },
  { figure: "undershootPercent", sign: "dives-below-idle", half: 8, width: 2 },
  { figure: "stalls", sign: "stalls-on-closing", half: 0.5, width: 0.1 },
];

/** How sure the clearest figure of a sound is to be what it stands for, while no limit is calibrated. Estimate. */
const SUREST = 0.9;

/** What a sound tells: each figure as its sign, weakened by how near the limit it is and how surely it was heard. */
export function soundObservations(sound: SoundResult, shift: Shift): Observation[] {
  const heard = Math.max(0, Math.min(1, sound.figures.confidence ?? 0.5));
  return HEARD.flatMap(({ figure, sign: id, half, width }) => {
    const value = sound.figures[figure];
    const sign = signById(id);
    if (value === undefined || sign === undefined) return [];
    const called = 1 / (1 + exp(-(value - half) / width));
    const sure = 0.5 + (SUREST - 0.5) * heard * Math.abs(2 * called - 1);
    return [
      {
        kind: "sign" as const,
        record: sound.record,
        at: sound.at,
        sign: softened(sign, sure),
        stretch: stretchOf(sign.speaksOf),
        seen: called >= 0.5,
        shift,
        situation: situationKey(sound.situation),
      },
    ];
  });
}

/** The sign as it looks through a figure that is right only so often; at 0.5 it says nothing. */
function softened(sign: Sign, sure: number): Sign {
  const seen = (chance: number): number => sure * chance + (1 - sure) * (1 - chance);
  const { rich, right, lean } = sign.chance;
  return {
    ...sign,
    chance: { rich: seen(rich), right: seen(right), lean: seen(lean) },
    faults: Object.fromEntries(Object.entries(sign.faults).map(([fault, chance]) => [fault, seen(chance)])),
    reliability: "C",
  };
}

/** From this opening on, evidence speaks of the main jet. */
const MAIN_FROM = 0.5;

/**
 * Whether a leaner main jet may be proposed at all: never on what was heard. A bike that was listened to needs
 * something else that speaks of half throttle or more. Rule A17.
 */
export function mainMayGoLeaner(
  observations: readonly Observation[],
  sounds: readonly SoundResult[],
): boolean {
  if (sounds.length === 0) return true;
  const heard = new Set(sounds.map(({ record }) => record));
  return observations.some((each) => {
    if (heard.has(each.record)) return false;
    if (each.kind === "compared") return each.opening >= MAIN_FROM;
    return each.kind !== "checked" && stretchCentre(each.stretch) >= MAIN_FROM;
  });
}
