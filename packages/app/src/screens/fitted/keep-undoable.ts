import { accept, type Outcome } from "@jetwright/core";
import type { NotKept } from "../../store/log-store.ts";
import type { Draft, Shop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";

interface UndoWords {
  readonly undo: string;
  readonly undone: string;
}

/** Keeps a record and gives the undo that goes with the words said: it strikes the record again. */
export async function keepUndoable(
  shop: Shop,
  draft: Draft & { readonly bike: string },
  words: UndoWords,
): Promise<Outcome<{ readonly words: string; readonly act: () => void }, NotKept>> {
  const kept = await shop.keep(draft);
  if (!kept.ok) return kept;
  const [record] = kept.value;
  return accept({
    words: words.undo,
    act: () => {
      void shop
        .keep({ kind: "record-struck", bike: draft.bike, body: { record: record! } })
        .then((struck) => say(struck.ok ? words.undone : struck.detail));
    },
  });
}
