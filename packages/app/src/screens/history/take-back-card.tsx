import { useState } from "preact/hooks";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { dayText } from "../../words/dates.ts";
import { useWords } from "../../words/use-words.ts";

/** The way back from the last change of parts; nothing where there was none. */
export function TakeBackCard({ bike }: { readonly bike: string }) {
  const words = useWords().history;
  const shop = useShop();
  const [{ language }] = usePreferences();
  const back = useAnswer("takeBack", { bike, language });
  const [busy, setBusy] = useState(false);
  if (!back?.ok) return null;
  const { body, changes, at } = back.value;
  const take = async () => {
    setBusy(true);
    const kept = await shop.keep({ kind: "setup-fitted", bike, body });
    setBusy(false);
    if (!kept.ok) return say(kept.detail);
    const [record] = kept.value;
    say(words.takenBack, {
      words: words.undo,
      act: () =>
        void shop
          .keep({ kind: "record-struck", bike, body: { record: record!, why: words.undoneWhy } })
          .then((undone) => say(undone.ok ? words.undone : undone.detail)),
    });
  };
  return (
    <details>
      <summary>{words.takeBack}</summary>
      <div class="stack history-inside">
        <p>{words.takeBackLead(dayText(at, language))}</p>
        <ul class="rows">
          {changes.map(({ from, to }) => (
            <li key={to} class="history-change">
              {words.from(from, to)}
            </li>
          ))}
        </ul>
        <p class="quiet">{words.takeBackHow}</p>
        <button type="button" class="button main" disabled={busy} onClick={() => void take()}>
          {words.takeBackDo}
        </button>
      </div>
    </details>
  );
}
