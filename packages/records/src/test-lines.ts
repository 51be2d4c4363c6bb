import type { Log } from "./log-reader.ts";

// Lines and short cuts for the tests of the reader.

export const note = (id: string, more: object = {}): string =>
  JSON.stringify({ id, kind: "note", at: "2026-05-02T10:15:00Z", body: { text: "hello" }, ...more });
export const ids = (log: Log): string[] => log.entries.map((entry) => entry.id);
/** "line path" of each problem. */
export const places = (log: Log): string[] => log.problems.map(({ line, path }) => `${line} ${path}`);
