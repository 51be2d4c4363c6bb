import { writeRecord } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/** The records that the log has with words which an erasure covers, each as it is to be kept: without them. */
export const erasedLines = (
  { log }: EngineState,
  _given: null,
): readonly { readonly id: string; readonly line: string }[] =>
  log.erased.map(({ id, source }) => ({ id, line: writeRecord(source) }));
