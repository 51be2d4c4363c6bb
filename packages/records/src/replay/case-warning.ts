import type { Warning } from "@jetwright/core";

/** Something assumed or doubtful in a case, and the record it is about. */
export type CaseWarning = Warning & { readonly record: string | null };

/** Warnings by what they say, so that each is said once however many rides it touches. */
export class CaseWarnings {
  readonly #said = new Map<string, CaseWarning>();

  add(warning: Warning, record: string | null = null): void {
    const key = JSON.stringify(warning);
    if (!this.#said.has(key)) this.#said.set(key, { ...warning, record });
  }

  get all(): readonly CaseWarning[] {
    return [...this.#said.values()];
  }
}
