import { useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { useShop } from "../../store/shop.ts";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";

interface SomethingElseProps {
  readonly bike: string;
  /** Writes down that the advice was not followed. */
  readonly onDecline: () => Promise<void>;
}

/** The person did something else: parts were changed, or it is told in their own words. */
export function SomethingElse({ bike, onDecline }: SomethingElseProps) {
  const words = useWords().step;
  const shop = useShop();
  const [text, setText] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);

  async function keep() {
    if (text.trim() === "") {
      setWrong(words.otherEmpty);
      return;
    }
    await onDecline();
    const kept = await shop.keep({ kind: "note", bike, body: { text: text.trim().slice(0, 20_000) } });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    setText("");
    say(words.otherKept);
  }

  return (
    <details>
      <summary>{words.other}</summary>
      <div class="stack folded">
        <Link class="button plain" href={bikeAddress(bike, "fitted")} onClick={() => void onDecline()}>
          {words.otherParts}
        </Link>
        <TextField
          label={words.otherNote}
          value={text}
          lines={3}
          wrong={wrong}
          onInput={(typed) => {
            setText(typed);
            setWrong(null);
          }}
        />
        <button type="button" class="button" onClick={() => void keep()}>
          {words.otherKeep}
        </button>
      </div>
    </details>
  );
}
