interface Stream {
  readonly shop: string;
  readonly device: string;
  readonly controller: ReadableStreamDefaultController<Uint8Array>;
  /** Something is to be told that could not be yet. */
  behind: boolean;
  /** Beats in a row that found the reader not reading. */
  stuck: number;
}

const MOST = 2000;
const MOST_OF_DEVICE = 8;
/** A reader that takes nothing for this many beats is let go. */
const STUCK_BEATS = 3;
const encode = (text: string) => new TextEncoder().encode(text);
const NEWS = encode("event: records\ndata: new\n\n");
const BEAT = encode(": still here\n\n");

/**
 * Streams of server-sent events: each says only that there are new records, and the device reads them by its
 * cursor. So a slow reader costs one event at most, and a lost one costs nothing.
 */
export class LiveStreams {
  readonly #streams = new Set<Stream>();

  get size(): number {
    return this.#streams.size;
  }

  /** The shops with a stream open. */
  get shops(): readonly string[] {
    return [...new Set([...this.#streams].map(({ shop }) => shop))];
  }

  /** A new stream; null when there are too many. */
  open(shop: string, device: string): ReadableStream<Uint8Array> | null {
    const own = [...this.#streams].filter((one) => one.device === device);
    if (this.#streams.size >= MOST || own.length >= MOST_OF_DEVICE) return null;
    let mine: Stream;
    return new ReadableStream<Uint8Array>(
      {
        start: (controller) => {
          mine = { shop, device, controller, behind: false, stuck: 0 };
          this.#streams.add(mine);
          controller.enqueue(encode("retry: 3000\n\n"));
        },
        pull: () => {
          mine.stuck = 0;
          if (mine.behind) this.#tell(mine);
        },
        cancel: () => void this.#streams.delete(mine),
      },
      { highWaterMark: 4 },
    );
  }

  /** There are new records in this shop. */
  news(shop: string): void {
    for (const stream of this.#streams) if (stream.shop === shop) this.#tell(stream);
  }

  /** Keeps proxies from cutting silent streams, and lets go of readers that do not read. */
  beat(): void {
    for (const stream of this.#streams) {
      if ((stream.controller.desiredSize ?? 0) > 0) stream.controller.enqueue(BEAT);
      else if (++stream.stuck >= STUCK_BEATS) this.#close(stream);
    }
  }

  /** Ends the streams that the test finds: of a revoked device, or all when the server stops. */
  end(which: (stream: { readonly shop: string; readonly device: string }) => boolean): void {
    for (const stream of this.#streams) if (which(stream)) this.#close(stream);
  }

  /** The devices with a stream open. */
  get devices(): readonly string[] {
    return [...new Set([...this.#streams].map(({ device }) => device))];
  }

  #tell(stream: Stream): void {
    if ((stream.controller.desiredSize ?? 0) <= 0) {
      stream.behind = true;
      return;
    }
    stream.behind = false;
    stream.controller.enqueue(NEWS);
  }

  #close(stream: Stream): void {
    this.#streams.delete(stream);
    try {
      stream.controller.close();
    } catch {
      // The reader had gone already.
    }
  }
}
