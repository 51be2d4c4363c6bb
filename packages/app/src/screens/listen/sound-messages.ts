import type {
  EngineSound,
  Heard,
  ListenRefusal,
  Refusal,
  SoundDoubt,
  SoundProof,
  SparkRefusal,
  SpeedOutline,
  StillSpeed,
  TakeFigure,
} from "@jetwright/core";

/** What the page says to the listening worker. */
export type ToListener =
  | {
      readonly say: "begin";
      readonly engine: EngineSound;
      readonly rate: number;
      /** True: the sound is kept to be read as a whole at the end; false: only live speed is wanted, for as long as you like. */
      readonly whole: boolean;
    }
  /** Something was turned: the speed is to settle anew. */
  | { readonly say: "turned" }
  | { readonly say: "sound"; readonly samples: Float32Array }
  | { readonly say: "end" }
  | { readonly say: "wave"; readonly file: ArrayBuffer; readonly engine: EngineSound }
  /** A recording with the microphone on one channel and the ignition on the other, as a WAV file or as samples. */
  | {
      readonly say: "prove";
      readonly sound: ArrayBuffer | { readonly channels: readonly Float32Array[]; readonly rate: number };
      readonly engine: EngineSound;
      readonly sparksPerTurn: 1 | 0.5;
    }
  | {
      readonly say: "clip";
      readonly samples: Float32Array;
      readonly rate: number;
      readonly engine: EngineSound;
    };

/** What it says back. */
export type FromListener =
  | ({ readonly say: "speed" } & LiveSpeed)
  | ({ readonly say: "heard" } & Take)
  | { readonly say: "refused"; readonly why: Refusal }
  | ({ readonly say: "proved" } & Proved)
  | { readonly say: "not-proved"; readonly why: NotProved }
  /** The file is no WAV: the browser may be able to decode it. */
  | { readonly say: "not-wave" };

/** Live speed, half a second late. */
export interface LiveSpeed {
  /** Null: no engine heard. */
  readonly rpm: number | null;
  /** Over the last second. */
  readonly smooth: number | null;
  /** The speed that has held still, or null while it moves. */
  readonly still: StillSpeed | null;
  /** Seconds listened. */
  readonly seconds: number;
}

/** A take that was read. */
export interface Take {
  readonly heard: Heard;
  readonly samples: Float32Array;
  readonly rate: number;
  /** What was measured, try by try; nothing where there are doubts. */
  readonly measured: readonly TakeFigure[];
  /** What a record keeps of it. */
  readonly figures: Readonly<Record<string, number>>;
  readonly speed: SpeedOutline;
}

/** A recording held against its sparks. */
export interface Proved {
  readonly proof: SoundProof;
  /** Why the sound would have been refused as a take. */
  readonly doubts: readonly SoundDoubt[];
}

export type NotProved = SparkRefusal | ListenRefusal | "not-wave" | "one-channel" | "no-overlap";
