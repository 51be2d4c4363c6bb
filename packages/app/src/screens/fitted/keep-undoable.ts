import { accept, type Outcome } from "@jetwright/core";
import type { NotKept } from "../../store/log-store.ts";
import type { Draft, Shop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";

interface UndoWords {
  readonly undo: string;
  readonly undone: string;
}

/** Keeps records together and gives the undo that goes with the words said: it strikes them again. */
export async function keepUndoable(
  shop: Shop,
  bike: string,
  words: UndoWords,
  ...drafts: readonly Omit<Draft, "bike">[]
): Promise<Outcome<{ readonly words: string; readonly act: () => void }, NotKept>> {
  const kept = await shop.keep(...drafts.map((draft) => ({ ...draft, bike })));
  if (!kept.ok) return kept;
  return accept({
    words: words.undo,
    act: () => {
      void shop
        .keep(...kept.value.map((record) => ({ kind: "record-struck", bike, body: { record } }) as const))
        .then((struck) => say(struck.ok ? words.undone : struck.detail));
    },
  });
}
