import { isErasure, writeRecord } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/** What the erasures of a log take away. */
export interface Erased {
  /** The records read with words that an erasure covers, each as it is to be kept: without them. */
  readonly lines: readonly { readonly id: string; readonly line: string }[];
  /** Bikes about which an erasure takes all words. */
  readonly bikes: readonly string[];
}

/** The records still to be emptied on this device, and the bikes that erasures cover. */
export const erased = ({ log }: EngineState, _given: null): Erased => ({
  lines: log.erased.map(({ id, source }) => ({ id, line: writeRecord(source) })),
  bikes: log.entries.filter(isErasure).flatMap(({ body }) => body.bikes ?? []),
});
