/**
 * The latest stretch of an endless row of numbers, addressed by their place in the whole row. Places below 0
 * hold zeros: a window may reach before the start.
 */
export class SampleTape {
  #kept: Float64Array;
  #first: number;
  #end = 0;

  /** @param lead how far before the start may be read */
  constructor(lead: number) {
    this.#first = -lead;
    this.#kept = new Float64Array(lead + 4096);
  }

  /** How many numbers there have been. */
  get end(): number {
    return this.#end;
  }

  /** The kept numbers themselves: place p is at index p − first. */
  get kept(): Float64Array {
    return this.#kept;
  }

  get first(): number {
    return this.#first;
  }

  push(value: number): void {
    const index = this.#end - this.#first;
    if (index === this.#kept.length) this.#grow();
    this.#kept[index] = value;
    this.#end += 1;
  }

  pushAll(values: Float32Array): void {
    while (this.#end - this.#first + values.length > this.#kept.length) this.#grow();
    this.#kept.set(values, this.#end - this.#first);
    this.#end += values.length;
  }

  /** Lets go of everything before a place. */
  forgetBefore(place: number): void {
    const gone = place - this.#first;
    // Moved only when half the room would be saved, so that each number is moved about once.
    if (gone <= this.#kept.length / 2) return;
    this.#kept.copyWithin(0, gone, this.#end - this.#first);
    this.#first = place;
  }

  #grow(): void {
    const larger = new Float64Array(this.#kept.length * 2);
    larger.set(this.#kept);
    this.#kept = larger;
  }
}
