import { Link } from "wouter-preact";
import { useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";

interface MarkRightProps {
  readonly bike: string;
  /** Somebody noted the air of now; without it nobody could say in which air it was right. */
  readonly airNoted: boolean;
}

/** The setup fitted is right in the air and on the fuel of now: one tap writes it down. */
export function MarkRight({ bike, airNoted }: MarkRightProps) {
  const words = useWords().right;
  const shop = useShop();

  async function mark() {
    const kept = await keepUndoable(shop, bike, words, { kind: "known-good-marked", body: {} });
    if (kept.ok) say(words.marked, kept.value);
    else say(kept.detail);
  }

  return (
    <section class="stack no-print">
      <p class="quiet small">{airNoted ? words.hint : words.airFirst}</p>
      {airNoted ? (
        <button type="button" class="button" onClick={() => void mark()}>
          {words.mark}
        </button>
      ) : (
        <Link class="button" href={bikeAddress(bike, "air")}>
          {words.noteAir}
        </Link>
      )}
    </section>
  );
}
