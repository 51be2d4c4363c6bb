import type { Entry } from "@jetwright/records";
import type { Named } from "../../../store/photo-shelf.ts";
import type { EngineState } from "../../state.ts";

const HASH = /\b[0-9a-f]{64}\b/g;

/**
 * The hashes that the log names, of pictures and of sounds. A record that was struck names nothing; one that cannot be
 * read here names whatever in it looks like a hash.
 */
export function photosNamed({ log, shop }: EngineState): Named {
  const struck = new Set(shop.struck.map(({ entry }) => entry.id));
  const hashes = log.entries.filter(({ id }) => !struck.has(id)).flatMap(hashesOf);
  return { hashes: [...new Set(hashes)], records: log.counts.lines - log.counts.repeated };
}

function hashesOf(entry: Entry): readonly string[] {
  if (entry.reading !== "used") return JSON.stringify(entry.source).match(HASH) ?? [];
  if (entry.kind === "photo") return [entry.body.hash];
  return entry.kind === "sound-heard" && entry.body.clip !== undefined ? [entry.body.clip] : [];
}
