import type { SoundFigureWords } from "../en/sound-figures.ts";

const figure = (words: string, unit: (value: string) => string) => ({ words, unit });

/** What each figure of a take is called in German, and with its unit. */
export const soundFigures: SoundFigureWords = {
  idleRpm: figure("Leerlauf", (value) => `${value} 1/min`),
  hangSeconds: figure("Hängt nach dem Schließen", (value) => `${value} s`),
  undershootPercent: figure("Taucht unter den Leerlauf", (value) => `${value} %`),
  settleSeconds: figure("Wieder im Leerlauf nach", (value) => `${value} s`),
  halvingSeconds: figure("Halbe Drehzahl nach", (value) => `${value} s`),
  delaySeconds: figure("Verzögerung, etwa", (value) => `${value} s`),
  riseSeconds: figure("Anstieg", (value) => `${value} s`),
  bogPercent: figure("Sackt vor dem Anstieg ab", (value) => `${value} %`),
  huntingPercent: figure("Leerlauf schwankt von selbst", (value) => `± ${value} %`),
};
