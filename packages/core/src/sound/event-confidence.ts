import { exp } from "../numerics/elementary.ts";
import type { EngineSound } from "./engine-sound.ts";
import type { SoundEvent } from "./sound-event.ts";
import { LINE_RATE, type SpeedLine, share } from "./speed-line.ts";

type Unsure<Event> = Event extends SoundEvent ? Omit<Event, "confidence"> : never;

/** Gives an event its confidence from that of the frames it rests on. */
export function withConfidence(event: Unsure<SoundEvent>, line: SpeedLine, engine: EngineSound): SoundEvent {
  const evidence = evidenceFor(event, line);
  const [at, slope] = CALIBRATION[event.kind];
  const lift = engine.strokes === 4 ? 0.05 : 0;
  const confidence = Math.max(0.02, Math.min(0.98, 1 / (1 + exp(-slope * (evidence + lift - at)))));
  return { ...event, confidence } as SoundEvent;
}

/** The weakest tenth of the frames it rests on. */
export function evidenceFor(event: Unsure<SoundEvent>, line: SpeedLine): number {
  // After a chop the first seconds tell; the rest is idle.
  const until =
    event.kind === "chop"
      ? Math.min(event.until, event.at + 4)
      : event.kind === "stall"
        ? event.at
        : event.until;
  const from = event.kind === "snap" ? event.at - 0.5 : event.kind === "stall" ? event.at - 0.8 : event.at;
  const first = Math.max(0, Math.floor(from * LINE_RATE));
  const last = Math.min(line.rpm.length, Math.ceil(until * LINE_RATE) + 1);
  return share([...line.confidence.slice(first, last)], 0.1);
}

/** Where half of such events are right, and how fast that changes. Fitted on made sounds. */
const CALIBRATION: Readonly<Record<SoundEvent["kind"], readonly [at: number, slope: number]>> = {
  idle: [0, 6],
  hunting: [0, 6],
  snap: [0, 6],
  chop: [0, 6],
  stall: [0, 6],
  skipping: [0, 6],
};
