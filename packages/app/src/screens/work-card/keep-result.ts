import type { JsonObject } from "@jetwright/records";
import type { Shop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import type { Words } from "../../words/en.ts";

/** Keeps the result of a test or check, or a note that there is none, and offers to take it back; false when it could not be kept, which is said. */
export async function keepResult(
  shop: Shop,
  words: Words["cards"],
  kind: "test-done" | "check-done" | "note",
  bike: string,
  body: JsonObject,
): Promise<boolean> {
  const kept = await shop.keep({ kind, bike, body });
  if (!kept.ok) {
    say(kept.detail);
    return false;
  }
  const record = kept.value[0]!;
  say(words.kept, {
    words: words.undo,
    act: () => {
      void shop
        .keep({ kind: "record-struck", bike, body: { record } })
        .then((struck) => say(struck.ok ? words.undone : struck.detail));
    },
  });
  return true;
}
