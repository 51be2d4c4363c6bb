/** What must be known of an engine to read its speed from its sound. It is never guessed. */
export interface EngineSound {
  readonly strokes: 2 | 4;
  /** 1, or 2 that fire evenly. */
  readonly cylinders: 1 | 2;
  /** The idle speed wanted or known, revolutions a minute, when the bike's card has it. */
  readonly idleHint: number | null;
}

/** Lowest and highest speed looked for, revolutions a minute. */
export const SPEED_RANGE = { lowest: 700, highest: 16000 } as const;

/** Firings a second at one revolution a minute. */
export const firingsPerRpm = ({ strokes, cylinders }: EngineSound): number =>
  (cylinders * (strokes === 2 ? 1 : 0.5)) / 60;
