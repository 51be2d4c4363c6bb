import type { NeedlePoint } from "../../engine/answers/drawer/needle-shape.ts";
import { typedNumber } from "../../ui/number-field.tsx";

/** A reading as typed. */
export interface ReadingRow {
  readonly below: string;
  readonly diameter: string;
}

/** Everything typed about a needle that is not kept yet. */
export interface NeedleDraft {
  readonly marks: string;
  /** Id of a bike, or empty for every needle with these marks. */
  readonly bike: string;
  readonly grooves: string;
  readonly pitch: string;
  readonly rows: readonly ReadingRow[];
}

/** Every 4 mm to where most needles begin to get thin, then every 4 mm to the tip of a common one. */
const USUAL_DISTANCES = [10, 14, 18, 22, 26, 30, 34, 38, 42, 46, 50, 54];

export const NEW_NEEDLE: NeedleDraft = {
  marks: "",
  bike: "",
  grooves: "",
  pitch: "",
  rows: USUAL_DISTANCES.map((below) => ({ below: `${below}`, diameter: "" })),
};

export interface ReadRows {
  readonly points: readonly NeedlePoint[];
  /** Numbers, from 1, of the rows that hold something that cannot be read. */
  readonly unread: readonly number[];
}

/** The readings typed. A row without a diameter is one not taken yet. */
export function readRows(rows: readonly ReadingRow[]): ReadRows {
  const points: NeedlePoint[] = [];
  const unread: number[] = [];
  rows.forEach(({ below, diameter }, i) => {
    if (diameter.trim() === "") return;
    const belowTopGrooveMm = typedNumber(below.replace("mm", ""));
    const diameterMm = typedNumber(diameter.replace("mm", ""));
    if (belowTopGrooveMm === null || diameterMm === null) unread.push(i + 1);
    else points.push({ belowTopGrooveMm, diameterMm });
  });
  return { points, unread };
}

const text = (value: unknown): string => (typeof value === "string" ? value : "");

/** A draft as it was stored; a new one where it is none. */
export function readNeedleDraft(stored: unknown): NeedleDraft {
  if (typeof stored !== "object" || stored === null) return NEW_NEEDLE;
  const { marks, bike, grooves, pitch, rows } = stored as Record<string, unknown>;
  const read = Array.isArray(rows)
    ? rows
        .filter((row): row is Record<string, unknown> => typeof row === "object" && row !== null)
        .map(({ below, diameter }) => ({ below: text(below), diameter: text(diameter) }))
    : [];
  return {
    marks: text(marks),
    bike: text(bike),
    grooves: text(grooves),
    pitch: text(pitch),
    rows: read.length > 0 ? read : NEW_NEEDLE.rows,
  };
}
