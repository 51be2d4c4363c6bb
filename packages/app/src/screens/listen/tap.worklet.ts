// Hands the microphone's samples on, unchanged, in blocks of about a twentieth of a second.

interface Processor {
  readonly port: MessagePort;
}
declare const AudioWorkletProcessor: new () => Processor;
declare function registerProcessor(name: string, processor: new () => Processor): void;

const BLOCK = 2048;

class Tap extends AudioWorkletProcessor {
  #blocks: readonly Float32Array[] = [];
  #filled = 0;

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const channels = inputs[0] ?? [];
    const length = channels[0]?.length ?? 0;
    for (let i = 0; i < length; i++) {
      if (this.#filled === 0) this.#blocks = channels.map(() => new Float32Array(BLOCK));
      channels.forEach((channel, c) => {
        if (this.#blocks[c] !== undefined) this.#blocks[c][this.#filled] = channel[i]!;
      });
      if (++this.#filled < BLOCK) continue;
      this.port.postMessage(
        this.#blocks,
        this.#blocks.map(({ buffer }) => buffer),
      );
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("tap", Tap);
