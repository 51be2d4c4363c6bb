import { keepUndoable } from "../screens/fitted/keep-undoable.ts";
import type { Shop } from "../store/shop.ts";
import { say } from "../ui/toast.tsx";
import type { Words } from "../words/en.ts";

/** Strikes the record of a picture and offers to take that back. */
export async function removePhoto(
  shop: Shop,
  bike: string,
  record: string,
  words: Words["photos"],
): Promise<void> {
  const struck = await keepUndoable(shop, bike, words, { kind: "record-struck", body: { record } });
  if (struck.ok) say(words.removed, struck.value);
  else say(struck.detail);
}
