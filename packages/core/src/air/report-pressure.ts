import { fromHectopascal, fromInchOfMercury, fromMillimetreOfMercury } from "../units/convert.ts";
import type { Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { hectopascalSaid } from "./figures.ts";

/** A pressure group as read: `pressure` is null when the report says it is missing or the figure cannot be. */
export interface PressureGroup {
  readonly letter: "Q" | "A";
  readonly pressure: Pascal | null;
  readonly warnings: readonly Warning[];
}

const possible = (p: Pascal): boolean => p >= 87_000 && p <= 108_500;

/** One of Q1018, QNH1018, QNH2992INS, A2992, A29.92, Q////; null for anything else. */
function readOne(word: string): PressureGroup | null {
  const match = /^(QNH|Q|A)(?:(\d\d\.?\d\d|\d{3})(?:HPA|INS)?|\/{4})$/.exec(word);
  if (match === null) return null;
  const letter = match[1] === "A" ? "A" : "Q";
  const digits = match[2]?.replace(".", "");
  if (digits === undefined) return { letter, pressure: null, warnings: [] };
  const inches = digits.length === 4 && (digits.startsWith("2") || digits.startsWith("3"));
  const pressure = inches ? fromInchOfMercury(Number(digits) / 100) : fromHectopascal(Number(digits));
  if (!possible(pressure)) {
    return {
      letter,
      pressure: null,
      warnings: [{ code: "pressure-group-impossible", given: { group: word } }],
    };
  }
  if (inches === (letter === "A") || word.endsWith("INS")) return { letter, pressure, warnings: [] };
  const given = { group: word, inches, hPa: hectopascalSaid(pressure) };
  return { letter, pressure, warnings: [{ code: "pressure-group-unit", given }] };
}

/**
 * The altimeter settings in one word, usually one. Q is whole hPa rounded down, A hundredths of inHg; two
 * may be joined by a stroke (Q1009/A2980). Empty for a word that is no pressure group.
 */
export function readPressureGroups(word: string): readonly PressureGroup[] {
  const whole = readOne(word);
  if (whole !== null) return [whole];
  const parts = word.split("/").map(readOne);
  return parts.length === 2 && parts.every((part) => part !== null) ? parts : [];
}

/** Difference between the two figures of a QFE group that rounding cannot explain, Pa. */
const QFE_SLACK = 200;

export interface QfeGroup {
  readonly pressure: Pascal | null;
  /** True when only whole mmHg were given, which is coarser. */
  readonly coarse: boolean;
  readonly warnings: readonly Warning[];
}

/**
 * Station pressure from the figures after QFE: three digits up to 820 are mmHg (Russian and Central Asian
 * practice), others hPa; "729/0972" gives both, and the finer hPa is used. Null for anything else.
 */
export function readQfe(figures: string): QfeGroup | null {
  const match = /^(\d{3,4}(?:\.\d)?)(?:\/(\d{3,4}(?:\.\d)?))?(?:HPA|MM)?$/.exec(figures);
  if (match === null) return null;
  const read = (digits: string): { pressure: Pascal; coarse: boolean } => {
    const value = Number(digits);
    const mercury = value <= 820 && !digits.startsWith("0");
    return { pressure: mercury ? fromMillimetreOfMercury(value) : fromHectopascal(value), coarse: mercury };
  };
  const usable = ({ pressure }: { pressure: Pascal }): boolean => pressure >= 50_000 && pressure <= 110_000;
  const first = read(match[1]!);
  const second =
    match[2] === undefined ? null : { pressure: fromHectopascal(Number(match[2])), coarse: false };
  const best = [second, first].find((figure) => figure !== null && usable(figure));
  if (best === undefined || best === null) {
    const given = { group: `QFE${figures}` };
    return { pressure: null, coarse: false, warnings: [{ code: "station-pressure-impossible", given }] };
  }
  const differ = second !== null && Math.abs(first.pressure - second.pressure) > QFE_SLACK;
  const given = { group: `QFE${figures}`, hPa: hectopascalSaid(best.pressure) };
  return { ...best, warnings: differ ? [{ code: "station-pressures-disagree", given }] : [] };
}

/**
 * Sea-level pressure from the three digits of an SLP remark (tens, units and tenths of hPa): the century
 * nearest the altimeter setting, or without one 9xx from 500 up and 10xx below.
 */
export function readSeaLevelRemark(digits: string, altimeter: Pascal | null): Pascal {
  const tail = Number(digits) / 10;
  const low = 900 + tail;
  const high = 1000 + tail;
  if (altimeter === null) return fromHectopascal(tail >= 50 ? low : high);
  const setting = altimeter / 100;
  return fromHectopascal(Math.abs(low - setting) < Math.abs(high - setting) ? low : high);
}
