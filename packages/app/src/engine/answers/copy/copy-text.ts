import { mergeEntries, readLog, writeRecord } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

/**
 * The text of a copy: every line kept on this device, once, in the order things happened, each as it was written.
 * Lines that can no longer be read come last, unchanged: a copy leaves nothing out.
 */
export function copyText(_state: EngineState, { lines }: { readonly lines: readonly string[] }): string {
  const left = new Set<string>();
  const byId = new Map<string, string[]>();
  for (const line of lines) {
    const id = idOf(line);
    if (id === null) left.add(line);
    else byId.set(id, [...(byId.get(id) ?? []), line]);
  }
  const ordered: string[] = [];
  const { entries, erased } = readLog(lines);
  // What a person asked to have removed is in no copy, also where the disk still has it.
  for (const { id, source } of erased) byId.set(id, [writeRecord(source)]);
  for (const { id } of mergeEntries(entries)) {
    ordered.push(...(byId.get(id) ?? []));
    byId.delete(id);
  }
  const rest = [...[...byId.values()].flat(), ...left];
  return [...ordered, ...rest].map((line) => `${line}\n`).join("");
}

function idOf(line: string): string | null {
  try {
    const { id } = JSON.parse(line) as { readonly id?: unknown };
    return typeof id === "string" ? id : null;
  } catch {
    return null;
  }
}
