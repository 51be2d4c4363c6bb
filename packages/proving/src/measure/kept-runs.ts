import { createHash } from "node:crypto";
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Timed } from "./run-all.ts";

/**
 * Outcomes kept on disk, a line each, in a file of the program's own hash: a run that was stopped goes on where it was,
 * and a program that changed by a letter starts afresh. A last line cut short is done over.
 */
export class KeptRuns {
  readonly #file: string;
  readonly #kept = new Map<string, Timed>();

  /** @param kind of rider, where one kind rides them all */
  constructor(folder: string, script: string, kind: string | null) {
    const hash = createHash("sha256").update(readFileSync(script)).digest("hex").slice(0, 16);
    mkdirSync(folder, { recursive: true });
    this.#file = join(folder, `${hash}${kind === null ? "" : `-${kind}`}.jsonl`);
    if (!existsSync(this.#file)) return;
    const text = readFileSync(this.#file, "utf8");
    for (const line of text.split("\n")) {
      const outcome = parsed(line);
      if (outcome !== null) this.#kept.set(keyOf(outcome), outcome);
    }
    if (!text.endsWith("\n")) appendFileSync(this.#file, "\n");
  }

  get(seed: string, policy: string): Timed | undefined {
    return this.#kept.get(keyOf({ seed, policy }));
  }

  add(outcomes: readonly Timed[]): void {
    for (const outcome of outcomes) this.#kept.set(keyOf(outcome), outcome);
    appendFileSync(this.#file, outcomes.map((outcome) => `${JSON.stringify(outcome)}\n`).join(""));
  }
}

const keyOf = ({ seed, policy }: Pick<Timed, "seed" | "policy">): string => `${seed}|${policy}`;

function parsed(line: string): Timed | null {
  try {
    return JSON.parse(line) as Timed;
  } catch {
    return null;
  }
}
