import type { AirWarning } from "@jetwright/core";

/** Something assumed or doubtful in a case: a fixed word, a sentence with what to do, and the record it is about. */
export interface CaseWarning extends AirWarning {
  readonly record: string | null;
}

/** Warnings by what they say, so that each is said once however many rides it touches. */
export class CaseWarnings {
  readonly #said = new Map<string, CaseWarning>();

  add(code: string, text: string, record: string | null = null): void {
    const key = `${code} ${text}`;
    if (!this.#said.has(key)) this.#said.set(key, { code, text, record });
  }

  get all(): readonly CaseWarning[] {
    return [...this.#said.values()];
  }
}
