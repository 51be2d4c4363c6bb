import tap from "./tap.worklet.ts?worker&url";

export type MicrophoneTrouble = "insecure" | "denied" | "none" | "busy";

/** A running microphone. */
export interface Microphone {
  readonly rate: number;
  /** Processing the browser would not switch off, by its own names. */
  readonly stillOn: readonly string[];
  readonly stop: () => void;
}

const PROCESSING = ["echoCancellation", "noiseSuppression", "autoGainControl"] as const;

/**
 * Opens the microphone with all its processing off: an idling engine is what noise suppression takes away. Asked for
 * two channels, a device that has one gives silence on the second.
 */
export async function openMicrophone(
  take: (channels: readonly Float32Array[]) => void,
  channelCount: 1 | 2 = 1,
): Promise<
  | { readonly ok: true; readonly value: Microphone }
  | { readonly ok: false; readonly trouble: MicrophoneTrouble }
> {
  if (!window.isSecureContext || navigator.mediaDevices === undefined)
    return { ok: false, trouble: "insecure" };
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount },
    });
  } catch (error) {
    const name = error instanceof DOMException ? error.name : "";
    const trouble = name === "NotAllowedError" ? "denied" : name === "NotFoundError" ? "none" : "busy";
    return { ok: false, trouble };
  }
  const context = new AudioContext();
  const stop = (): void => {
    for (const track of stream.getTracks()) track.stop();
    void context.close().catch(() => undefined);
  };
  try {
    await context.audioWorklet.addModule(tap);
    const node = new AudioWorkletNode(context, "tap", {
      numberOfOutputs: 0,
      channelCount,
      channelCountMode: "explicit",
      channelInterpretation: "discrete",
    });
    node.port.onmessage = ({ data }: MessageEvent<readonly Float32Array[]>) => take(data);
    context.createMediaStreamSource(stream).connect(node);
    await context.resume();
  } catch {
    stop();
    return { ok: false, trouble: "busy" };
  }
  const settings = stream.getAudioTracks()[0]?.getSettings() ?? {};
  return {
    ok: true,
    value: { rate: context.sampleRate, stillOn: PROCESSING.filter((name) => settings[name] === true), stop },
  };
}
