// Hands the microphone's samples on, unchanged, in blocks of about a twentieth of a second.

interface Processor {
  readonly port: MessagePort;
}
declare const AudioWorkletProcessor: new () => Processor;
declare function registerProcessor(name: string, processor: new () => Processor): void;

const BLOCK = 2048;

class Tap extends AudioWorkletProcessor {
  #block = new Float32Array(BLOCK);
  #filled = 0;

  process(inputs: readonly (readonly Float32Array[])[]): boolean {
    const samples = inputs[0]?.[0];
    if (samples === undefined) return true;
    for (const value of samples) {
      this.#block[this.#filled++] = value;
      if (this.#filled < BLOCK) continue;
      this.port.postMessage(this.#block, [this.#block.buffer]);
      this.#block = new Float32Array(BLOCK);
      this.#filled = 0;
    }
    return true;
  }
}

registerProcessor("tap", Tap);
