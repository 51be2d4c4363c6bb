import type { SignId } from "../../words/core-words.ts";
import type { Sign } from "../catalogue.ts";

type Usual = "faults" | "healthy" | "strokes" | "warmOnly" | "stop";

/** A sign as written in the tables: what is left out is usual (a warm engine, both strokes, no stop). */
export type Row = Omit<Sign, Usual | "id"> & Partial<Pick<Sign, Usual>> & { readonly id: SignId };

/** A sign of the catalogue: one that has words in every language. */
export type KnownSign = Sign & { readonly id: SignId };

/** Fills in what is usual. */
export function signs(rows: readonly Row[]): readonly KnownSign[] {
  return rows.map((row) => ({
    faults: {},
    healthy: false,
    strokes: "both",
    warmOnly: true,
    stop: false,
    ...row,
  }));
}

/** Source of a sign taken from a row of the signs table; what the row says is of that standing. */
export function table(row: string, standing: string): string {
  return `signs table row ${row}; ${standing}; chances [estimate]`;
}

/** Source of a sign the table lacks, with what it rests on. */
export function added(ground: string): string {
  return `added to the signs table; ${ground}; chances [estimate]`;
}
