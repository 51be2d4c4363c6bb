import type { RecordProblem } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import type { Uncopied } from "./copy-due.ts";

/** What is kept here, and how much of it no copy has. */
export interface CopyState extends Uncopied {
  readonly records: number;
  readonly newerVersion: number;
  readonly unknownKinds: readonly string[];
  readonly faulty: readonly RecordProblem[];
}

const UUID_7 = /^([0-9a-f]{8})-([0-9a-f]{4})-7/;

/** When a record was written down, by its id; null for ids typed by hand, which came from a file. */
function writtenAt(id: string): number | null {
  const made = UUID_7.exec(id);
  return made === null ? null : Number.parseInt(`${made[1]}${made[2]}`, 16);
}

/** How old the last copy is in records. Records that came from a file or another phone have a copy there. */
export function copyState(
  { entries, log }: EngineState,
  { lastCopyAt }: { readonly lastCopyAt: number | null },
): CopyState {
  const mine = entries
    .map(({ id }) => writtenAt(id))
    .filter((at) => at !== null)
    .filter((at) => lastCopyAt === null || at > lastCopyAt);
  return {
    records: entries.length,
    since: mine.length,
    firstAt: mine.length === 0 ? null : mine.reduce((a, b) => Math.min(a, b)),
    newerVersion: log.counts.newerVersion,
    unknownKinds: Object.keys(log.counts.unknownKinds),
    faulty: log.problems,
  };
}
