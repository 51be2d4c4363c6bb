import { useState } from "preact/hooks";
import { Link } from "wouter-preact";
import type { OrderView } from "../../engine/answers/orders/order-view.ts";
import { useShop } from "../../store/shop.ts";
import { NumberField } from "../../ui/number-field.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";
import { readWork } from "./read-work.ts";

const NOTHING = { minutes: "", words: "", parts: "" };

/** Time and parts added to an open order. */
export function NoteWork({ order: { bike } }: { readonly order: OrderView }) {
  const words = useWords().orders;
  const shop = useShop();
  const [typed, setTyped] = useState(NOTHING);
  const [wrong, setWrong] = useState<string | null>(null);
  const set = (change: Partial<typeof NOTHING>) => {
    setTyped((now) => ({ ...now, ...change }));
    setWrong(null);
  };

  async function keep() {
    const read = readWork(typed, words);
    if (!read.ok) {
      if (read.reason === "minutes") setWrong(read.detail);
      say(read.detail);
      return;
    }
    const kept = await keepUndoable(shop, bike, words, { kind: "work-noted", body: read.value });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    setTyped(NOTHING);
    say(words.noted, kept.value);
  }

  return (
    <section class="stack no-print">
      <h2>{words.addWork}</h2>
      <Link class="button" href={bikeAddress(bike)}>
        {words.toBike}
      </Link>
      <NumberField
        label={words.minutesSpent}
        unit="min"
        value={typed.minutes}
        wrong={wrong}
        onInput={(minutes) => set({ minutes })}
      />
      <TextField
        label={words.done}
        lines={2}
        value={typed.words}
        onInput={(done) => set({ words: done.slice(0, 20_000) })}
      />
      <TextField
        label={words.otherParts}
        hint={words.otherPartsHint}
        value={typed.parts}
        onInput={(parts) => set({ parts: parts.slice(0, 5_000) })}
      />
      <button type="button" class="button" onClick={() => void keep()}>
        {words.addIt}
      </button>
    </section>
  );
}
