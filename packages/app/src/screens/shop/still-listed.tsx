import { useState } from "preact/hooks";
import { say } from "../../ui/toast.tsx";
import { offTheList } from "./off-the-list.ts";
import { useShopWords } from "./shop-words.ts";

interface StillListedProps {
  readonly device: string;
  readonly onGone: () => void;
}

/** This device has left its shop, whose server was out of reach: what is still to be done. */
export function StillListed({ device, onGone }: StillListedProps) {
  const words = useShopWords();
  const [busy, setBusy] = useState(false);

  async function takeOff(): Promise<void> {
    setBusy(true);
    const gone = await offTheList(device);
    say(gone ? words.takenOff : words.stillAway);
    if (gone) onGone();
    else setBusy(false);
  }

  return (
    <section class="stack">
      <p class="warn" role="alert">
        {words.stillListed}
      </p>
      <button type="button" class="button" disabled={busy} onClick={() => void takeOff()}>
        {words.takeOff}
      </button>
    </section>
  );
}
