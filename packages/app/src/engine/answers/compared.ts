import {
  accept,
  type Circuit,
  compare,
  type Outcome,
  openingName,
  SPOKEN_OPENINGS,
  warningText,
} from "@jetwright/core";
import { situationOfRecord } from "@jetwright/records";
import type { EngineState } from "../state.ts";
import { type PartCompared, partRows } from "./part-rows.ts";

export interface ComparedAt {
  readonly opening: string;
  /** Percent by which the second runs richer; below zero leaner. */
  readonly percent: number;
  /** The part that makes most of it; null where nothing moves. */
  readonly by: Circuit | null;
}

export interface Compared {
  readonly changes: readonly PartCompared[];
  readonly at: readonly ComparedAt[];
  readonly notes: readonly string[];
}

/**
 * How much richer or leaner one setup of a bike runs than another at the openings people speak of: by its parts
 * alone, in one air, or each in the air it was ridden in.
 */
export function compared(
  { shop, words }: EngineState,
  {
    bike,
    from,
    to,
    air,
  }: { readonly bike: string; readonly from: string; readonly to: string; readonly air: "same" | "each" },
): Outcome<Compared> {
  const first = situationOfRecord(shop, bike, from);
  if (!first.ok) return first;
  const second = situationOfRecord(shop, bike, to);
  if (!second.ok) return second;
  const there = air === "same" ? { ...first.value, setup: second.value.setup } : second.value;
  const comparison = compare(first.value, there);
  if (!comparison.ok) return comparison;
  const before = partRows(first.value.setup, words);
  const after = partRows(second.value.setup, words);
  return accept({
    changes: before
      .map(({ part, value }, i) => ({ part, from: value, to: after[i]!.value }))
      .filter((one) => one.from !== one.to),
    at: comparison.value.at
      .filter(({ opening }) => SPOKEN_OPENINGS.includes(opening))
      .map(({ opening, ratio, byCircuit }) => ({
        opening: openingName(opening),
        percent: (ratio - 1) * 100,
        by: strongest(byCircuit),
      })),
    notes: comparison.value.notes.map((note) => warningText(note, words)),
  });
}

/** Below this, ln ratio, nothing is worth a name. */
const HARDLY = 0.0005;

function strongest(byCircuit: Readonly<Record<Circuit, number>>): Circuit | null {
  const [first] = (Object.entries(byCircuit) as [Circuit, number][]).sort(
    (a, b) => Math.abs(b[1]) - Math.abs(a[1]),
  );
  return first === undefined || Math.abs(first[1]) < HARDLY ? null : first[0];
}
