import type { Language } from "./catalogues.ts";
import type { AnswerOf, ArgumentsOf, FromEngine, Question, ToEngine } from "./protocol.ts";

/** The page's side of the worker: hands it records, asks it questions. */
export class Engine {
  readonly #worker: Worker;
  readonly #waiting = new Map<number, { resolve: (answer: unknown) => void; reject: (bug: Error) => void }>();
  #tickets = 0;
  #language: Language = "en";
  #spoken = false;

  constructor(worker: Worker) {
    this.#worker = worker;
    worker.onmessage = ({ data }: MessageEvent<FromEngine>) => {
      const waiting = this.#waiting.get(data.ticket);
      this.#waiting.delete(data.ticket);
      if (data.ok) waiting?.resolve(data.answer);
      else waiting?.reject(new Error(data.bug));
    };
  }

  /** Hands over records as written; resolves when they are in. */
  async add(lines: readonly string[]): Promise<void> {
    await this.#send((ticket) => ({ say: "records", lines, ticket }));
  }

  forget(): void {
    this.#worker.postMessage({ say: "forget" } satisfies ToEngine);
  }

  get language(): Language {
    return this.#language;
  }

  /** The language of every answer from now on. */
  speak(language: Language): void {
    if (language === this.#language && this.#spoken) return;
    this.#language = language;
    this.#spoken = true;
    this.#worker.postMessage({ say: "speak", language } satisfies ToEngine);
  }

  ask<Q extends Question>(question: Q, given: ArgumentsOf<Q>): Promise<AnswerOf<Q>> {
    return this.#send((ticket) => ({
      say: "ask",
      ticket,
      question,
      given,
      language: this.#language,
    })) as Promise<AnswerOf<Q>>;
  }

  #send(message: (ticket: number) => ToEngine): Promise<unknown> {
    const ticket = ++this.#tickets;
    return new Promise((resolve, reject) => {
      this.#waiting.set(ticket, { resolve, reject });
      this.#worker.postMessage(message(ticket));
    });
  }
}

export const startEngine = (): Engine =>
  new Engine(new Worker(new URL("./worker.ts", import.meta.url), { type: "module" }));
