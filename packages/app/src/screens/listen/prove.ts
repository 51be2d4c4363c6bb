import { type Clip, type EngineSound, listen, readWave, soundProof, sparkSpeed } from "@jetwright/core";
import type { NotProved, Proved } from "./sound-messages.ts";

/** Holds a recording against the sparks on its other channel, whichever of the two that is; or says why not. */
export function prove(
  sound: ArrayBuffer | Pick<Clip, "channels" | "rate">,
  engine: EngineSound,
  sparksPerTurn: 1 | 0.5,
): Proved | NotProved {
  const clip =
    sound instanceof ArrayBuffer ? readWave(new Uint8Array(sound)) : { ok: true as const, value: sound };
  if (!clip.ok) return "not-wave";
  const { rate } = clip.value;
  const [first, second] = clip.value.channels;
  if (first === undefined || second === undefined) return "one-channel";
  const sparks = sparkSpeed(second, rate, sparksPerTurn);
  const turned = sparks.ok ? null : sparkSpeed(first, rate, sparksPerTurn);
  const found = turned?.ok ? turned : sparks;
  if (!found.ok) return found.reason;
  const heard = listen(turned?.ok ? second : first, rate, engine, { pictures: false });
  if (!heard.ok) return heard.reason;
  const proof = soundProof(heard.value.track, found.value);
  return proof === null ? "no-overlap" : { proof, doubts: heard.value.doubts.map(({ reason }) => reason) };
}
