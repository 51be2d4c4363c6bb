import { DEPTH_LIMIT } from "./canonical-json.ts";
import { type Flaw, flaw } from "./problem.ts";
import { type Knowledge, type Read, readRecord } from "./read-record.ts";

/** Longest line that is read, in UTF-16 units. A record is a few hundred; pictures and clips live elsewhere. */
export const LINE_LIMIT = 1_000_000;

const nothing = (problem: Flaw): Read => ({ entry: null, id: null, flaws: [problem], notes: [] });

export const tooLong = (): Read => nothing(flaw("", "line-too-long", { limit: LINE_LIMIT }));

/** What makes a parsed value unfit to be written again: nesting, numbers beyond range, half characters. */
function unfit(value: unknown, path: string, depth: number, checkText: boolean): Flaw | null {
  if (typeof value === "number") {
    if (Number.isFinite(value)) return null;
    return flaw(path, "number-too-large", {});
  }
  if (typeof value === "string") {
    if (!checkText || !LONE_SURROGATE.test(value)) return null;
    return flaw(path, "half-character", {});
  }
  if (typeof value !== "object" || value === null) return null;
  if (depth >= DEPTH_LIMIT) return flaw("", "too-deep", { limit: DEPTH_LIMIT });
  for (const key in value) {
    const at = path === "" ? key : `${path}.${key}`;
    if (checkText && LONE_SURROGATE.test(key)) return unfit(key, path, 0, true);
    const found = unfit((value as Record<string, unknown>)[key], at, depth + 1, checkText);
    if (found !== null) return found;
  }
  return null;
}

const LONE_SURROGATE = /\p{Surrogate}/u;
const MAY_HOLD_SURROGATE = /\\u[dD]|\p{Surrogate}/u;

/** Why a line is no JSON, as near as can be told. */
function noJson(line: string): Read {
  const shown = line.length > 60 ? `${line.slice(0, 57)}...` : line;
  if (!line.startsWith("{")) return nothing(flaw("", "no-record", { shown }));
  if (!line.endsWith("}")) return nothing(flaw("", "half-written", { end: line.slice(-40) }));
  return nothing(flaw("", "not-json", { shown }));
}

/** One line of a log; null for an empty one. Never throws for what is in it. */
export function readLine(text: string, line: number | null, knowing: Knowledge): Read | null {
  if (text.length > LINE_LIMIT) return tooLong();
  const bare = (text.charCodeAt(0) === 0xfeff ? text.slice(1) : text).trim();
  if (bare === "") return null;
  let value: unknown;
  try {
    value = JSON.parse(bare);
  } catch {
    return noJson(bare);
  }
  const problem = unfit(value, "", 0, MAY_HOLD_SURROGATE.test(bare));
  if (problem !== null) return { ...nothing(problem), id: null };
  return readRecord(value, line, knowing);
}
