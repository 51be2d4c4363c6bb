import type { TakeFigureName } from "@jetwright/core";

/** Decimals each figure is shown with. */
export const DIGITS = {
  idleRpm: 0,
  hangSeconds: 2,
  undershootPercent: 0,
  settleSeconds: 1,
  halvingSeconds: 2,
  delaySeconds: 2,
  riseSeconds: 2,
  bogPercent: 0,
  huntingPercent: 0,
} as const satisfies Readonly<Record<TakeFigureName, number>>;
