import type { EngineSound, Heard } from "@jetwright/core";

/** What the page says to the listening worker. */
export type ToListener =
  | { readonly say: "begin"; readonly engine: EngineSound; readonly rate: number }
  | { readonly say: "sound"; readonly samples: Float32Array }
  | { readonly say: "end" }
  | { readonly say: "wave"; readonly file: ArrayBuffer; readonly engine: EngineSound }
  | {
      readonly say: "clip";
      readonly samples: Float32Array;
      readonly rate: number;
      readonly engine: EngineSound;
    };

/** What it says back. */
export type FromListener =
  /** Live speed, half a second late; null: no engine heard. */
  | { readonly say: "speed"; readonly rpm: number | null; readonly seconds: number }
  | { readonly say: "heard"; readonly heard: Heard; readonly samples: Float32Array; readonly rate: number }
  | { readonly say: "refused"; readonly detail: string }
  /** The file is no WAV: the browser may be able to decode it. */
  | { readonly say: "not-wave" };
