import type { CoreWords, SignId } from "./core-words.ts";
import type { SignWords } from "./entry.ts";

/** What a sign is called. Throws RangeError for one that the catalogue lacks, which would be our bug. */
export function signWords(words: CoreWords, id: string): SignWords {
  const found = words.signs[id as SignId] as SignWords | undefined;
  if (found === undefined) throw new RangeError(`Sign "${id}" has no words`);
  return found;
}
