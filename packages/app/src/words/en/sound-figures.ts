import type { Told } from "../told.ts";

const figure = (words: string, unit: (value: string) => string) => ({ words, unit });

/** What each figure of a take is called in English, and with its unit. */
export const soundFigures = {
  idleRpm: figure("Idle", (value) => `${value} rpm`),
  hangSeconds: figure("Hang after closing", (value) => `${value} s`),
  undershootPercent: figure("Dip below idle", (value) => `${value} %`),
  settleSeconds: figure("Back at idle after", (value) => `${value} s`),
  halvingSeconds: figure("Halves its speed in", (value) => `${value} s`),
  delaySeconds: figure("Delay, about", (value) => `${value} s`),
  riseSeconds: figure("Rise", (value) => `${value} s`),
  bogPercent: figure("Sag before the rise", (value) => `${value} %`),
  huntingPercent: figure("Idle swings by itself", (value) => `± ${value} %`),
};

export type SoundFigureWords = Told<typeof soundFigures>;
