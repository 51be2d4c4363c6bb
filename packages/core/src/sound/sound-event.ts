/** Something the engine did, read from its speed. Times in seconds from the start of the sound. */
export type SoundEvent = Idle | Hunting | Snap | Chop | Stall | Skipping;

interface Happened {
  readonly at: number;
  readonly until: number;
  /** Chance that it happened and its figures are within the limits docs/sound.md states; from made sounds. */
  readonly confidence: number;
}

/** Ticking over. */
export interface Idle extends Happened {
  readonly kind: "idle";
  readonly rpm: number;
  /** Slow wander of the speed, percent of it; unevenness from firing to firing is not in it. */
  readonly wanderPercent: number;
  /** Seconds of steady running it rests on. */
  readonly seconds: number;
}

/** An idle that swings up and down by itself. */
export interface Hunting extends Happened {
  readonly kind: "hunting";
  /** Swing to either side, percent of idle. */
  readonly swingPercent: number;
  readonly everySeconds: number;
}

/** A quick opening of the throttle. */
export interface Snap extends Happened {
  readonly kind: "snap";
  /** From the throttle's opening to the rise, about; null when the opening could not be heard. */
  readonly delaySeconds: number | null;
  /** 10 to 90 % of the rise. */
  readonly riseSeconds: number;
  /** Octaves a second over the same stretch of the rise. */
  readonly riseRate: number;
  readonly peakRpm: number;
  /** How far it sagged below idle before it rose, percent. */
  readonly bogPercent: number;
}

/** The throttle shut again, and what followed. */
export interface Chop extends Happened {
  readonly kind: "chop";
  readonly fromRpm: number;
  /** Octaves a second down to 30 % of the way. */
  readonly fallRate: number;
  /** Seconds held above idle before it came down; 0: it did not hang. */
  readonly hangSeconds: number;
  /** Speed it hung at; null without a hang. */
  readonly hangRpm: number | null;
  /** Percent it dived below idle; null when it never came down to idle. */
  readonly undershootPercent: number | null;
  /** Seconds below 93 % of idle. */
  readonly belowSeconds: number;
  /** Seconds until it stayed within 7 % of idle; null when it did not. */
  readonly settleSeconds: number | null;
}

/** It died. */
export interface Stall extends Happened {
  readonly kind: "stall";
}

/** Firing every second time for a while, with how fast it turned. */
export interface Skipping extends Happened {
  readonly kind: "skipping";
  readonly rpm: number;
}
