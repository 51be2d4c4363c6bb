import type { SoundFigureWords } from "../en/sound-figures.ts";

const figure = (words: string, unit: (value: string) => string) => ({ words, unit });

/** What each figure of a take is called in Spanish, and with its unit. */
export const soundFigures: SoundFigureWords = {
  idleRpm: figure("Ralentí", (value) => `${value} r/min`),
  hangSeconds: figure("Se queda alto al cerrar", (value) => `${value} s`),
  undershootPercent: figure("Cae bajo el ralentí", (value) => `${value} %`),
  settleSeconds: figure("Vuelve al ralentí en", (value) => `${value} s`),
  halvingSeconds: figure("Pierde la mitad en", (value) => `${value} s`),
  delaySeconds: figure("Retraso, aprox.", (value) => `${value} s`),
  riseSeconds: figure("Subida", (value) => `${value} s`),
  bogPercent: figure("Se hunde antes de subir", (value) => `${value} %`),
  huntingPercent: figure("El ralentí oscila solo", (value) => `± ${value} %`),
};
