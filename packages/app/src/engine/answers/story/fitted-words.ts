import { type Entry, FITTED_PARTS, type FittedPart, type UsedEntryOf } from "@jetwright/records";
import { drawerWords } from "./drawer-words.ts";
import { joined } from "./joined.ts";
import { partWords } from "./part-words.ts";
import type { Saying } from "./story-words.ts";

/** Finds a record by the id that another names. */
export type Find = (id: string) => Entry | undefined;

type Fitted = UsedEntryOf<"setup-fitted">["body"];

/** The part as it was before a change, looked for in the setups that this one and those before it took the place of. */
function replaced(name: FittedPart, { replaces }: Fitted, find: Find): Fitted[FittedPart] {
  const seen = new Set<string>();
  for (let id = replaces; id !== undefined && !seen.has(id); ) {
    seen.add(id);
    const old = find(id);
    if (old?.reading !== "used" || old.kind !== "setup-fitted") return undefined;
    if (old.body[name] !== undefined) return old.body[name];
    id = old.body.replaces;
  }
  return undefined;
}

/** Is it what a step was called, "Pilot jet 45 to 42", which once was written as the reason and says the part again? */
const isTitle = (why: string, part: string): boolean =>
  why.toLowerCase().startsWith(`${part.toLowerCase()} `) &&
  /^[\d.,]+ \S+ [\d.,]+$/.test(why.slice(part.length + 1));

/** What was found or put in, what it took the place of, why, and how the drawer changed. */
export function fittedWords(body: Fitted, words: Saying, find: Find): string {
  const parts = FITTED_PARTS.filter((name) => body[name] !== undefined);
  const named = parts.map((name) => {
    const part = body[name];
    const what = partWords(name, part, words);
    if (body.asFound === true) {
      const how = part !== undefined && part !== "unknown" ? part.how : undefined;
      return how === undefined ? what : `${what} (${words.how[how]})`;
    }
    const before = replaced(name, body, find);
    const old = before === undefined || before === "unknown" ? what : partWords(name, before, words);
    return old === what ? what : words.before(what, old);
  });
  const told = body.asFound === true ? words.found(joined(named)) : words.fitted(joined(named));
  const again = parts.some((name) => isTitle(body.why ?? "", words.part[name]));
  const { took = [], kept = [] } = body.drawer ?? {};
  return joined(
    [
      joined([told, !again && body.why && words.why(body.why)], "; "),
      took.length > 0 && words.used(drawerWords(took, words)),
      kept.length > 0 && words.bought(drawerWords(kept, words)),
    ],
    ". ",
  );
}
