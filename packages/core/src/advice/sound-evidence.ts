import type { Sign } from "../belief/catalogue.ts";
import type { Observation } from "../belief/observation.ts";
import { signById } from "../belief/signs/all.ts";
import { stretchCentre, stretchOf } from "../belief/state.ts";
import type { Shift } from "../units/circuit.ts";
import type { SoundResult } from "./case.ts";
import { chanceOf, chanceOfStall, HEARD_FIGURES } from "./heard-likelihood.ts";
import { situationKey } from "./situation-key.ts";

/**
 * What a sound tells: each figure as its sign, as sure as the figure makes it. Even a clear one moves a belief less
 * than a careful rider's word, while no real engine has confirmed how the figures scatter.
 */
export function soundObservations(sound: SoundResult, shift: Shift): Observation[] {
  const { figures } = sound;
  const confidence = Math.max(0, Math.min(1, figures.confidence ?? 0.5));
  const told = (id: string, chance: number): Observation[] => {
    const sign = signById(id);
    if (sign === undefined) return [];
    const seen = chance >= 0.5;
    return [
      {
        kind: "sign",
        record: sound.record,
        at: sound.at,
        sign: softened(sign, seen ? chance : 1 - chance),
        stretch: stretchOf(sign.speaksOf),
        seen,
        shift,
        situation: situationKey(sound.situation),
      },
    ];
  };
  return [
    ...HEARD_FIGURES.flatMap((heard) => {
      const value = figures[heard.figure];
      if (value === undefined) return [];
      const chance = chanceOf(heard, value, confidence, figures.closings);
      // Without load any engine may answer at once: only a late one tells.
      if (heard.against) return chance > 0.5 ? told(heard.sign, 1 - chance) : [];
      return told(heard.sign, chance);
    }),
    ...(figures.stalls === undefined
      ? []
      : told("stalls-on-closing", chanceOfStall(figures.stalls >= 1, confidence))),
  ];
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
