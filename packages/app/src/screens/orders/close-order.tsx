import { useState } from "preact/hooks";
import type { OrderView } from "../../engine/answers/orders/order-view.ts";
import { useShop } from "../../store/shop.ts";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { keepUndoable } from "../fitted/keep-undoable.ts";

/** Hands the bike over and closes the order; undo opens it again. */
export function CloseOrder({ order: { id, bike, closedAt } }: { readonly order: OrderView }) {
  const words = useWords().orders;
  const shop = useShop();
  const [handedOver, setHandedOver] = useState("");
  if (closedAt !== null) return null;

  async function close() {
    const kept = await keepUndoable(shop, bike, words, {
      kind: "order-closed",
      body: { order: id, handedOver: handedOver.trim() },
    });
    if (kept.ok) say(words.closedNow, kept.value);
    else say(kept.detail);
  }

  return (
    <section class="stack no-print">
      <h2>{words.handOver}</h2>
      <TextField
        label={words.handedOver}
        hint={words.handedOverHint}
        lines={3}
        value={handedOver}
        onInput={(text) => setHandedOver(text.slice(0, 20_000))}
      />
      <button type="button" class="button main" onClick={() => void close()}>
        {words.closeIt}
      </button>
    </section>
  );
}
