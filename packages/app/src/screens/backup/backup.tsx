import { useState } from "preact/hooks";
import "../../styles/backup.css";
import { canShareFile, saveFile, shareFile } from "../../carry/hand-over.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { dayText, fileDay } from "../../words/dates.ts";
import { useWords } from "../../words/use-words.ts";
import { keyOf, ProblemLine } from "./problem-line.tsx";
import { Storage } from "./storage.tsx";
import { TakeIn } from "./take-in.tsx";

/** A file in the place for downloads is a copy as soon as it is handed over. */
const saved = async (name: string, text: string): Promise<boolean> => {
  saveFile(name, text);
  return true;
};

/** The log to a file and back, and what the browser does with what it keeps. */
export function BackupScreen() {
  const { backup: words, photos } = useWords();
  const shop = useShop();
  const [{ lastCopyAt, language }, setPreferences] = usePreferences();
  const state = useAnswer("copyState", { lastCopyAt });
  const [busy, setBusy] = useState(false);

  const copy = async (hand: (name: string, text: string) => Promise<boolean>) => {
    setBusy(true);
    try {
      const at = Date.now();
      const lines = await shop.store.all();
      const text = await shop.engine.ask("copyText", { lines });
      if (!(await hand(words.fileName(fileDay(at)), text))) return;
      setPreferences({ lastCopyAt: at });
      say(words.saved(lines.length));
    } finally {
      setBusy(false);
    }
  };
  return (
    <Screen title={words.title} back={{ to: "/", words: words.back }} wide>
      <div class="columns stack apart">
        <section class="stack">
          <p>{words.lead}</p>
          {state !== null && (
            <p>
              <b>{words.count(state.records)}</b>{" "}
              {lastCopyAt === null ? words.never : words.last(dayText(lastCopyAt, language), state.since)}
            </p>
          )}
          <p class="quiet small">{photos.notInCopy}</p>
          <button type="button" class="button main" disabled={busy} onClick={() => void copy(saved)}>
            {words.save}
          </button>
          {canShareFile() && (
            <button type="button" class="button" disabled={busy} onClick={() => void copy(shareFile)}>
              {words.share}
            </button>
          )}
        </section>
        <TakeIn />
        <section class="stack">
          <Storage />
          {state !== null &&
            (state.newerVersion > 0 || state.unknownKinds.length > 0 || state.faulty.length > 0) && (
              <>
                <h2>{words.notUsed}</h2>
                {state.newerVersion > 0 && <p>{words.keptNewer(state.newerVersion)}</p>}
                {state.unknownKinds.length > 0 && <p>{words.keptUnknown(state.unknownKinds.join(", "))}</p>}
                {state.faulty.length > 0 && (
                  <>
                    <p>{words.keptFaulty}</p>
                    <ul class="rows">
                      {state.faulty.slice(0, 20).map((problem) => (
                        <ProblemLine key={keyOf(problem)} problem={problem} />
                      ))}
                    </ul>
                  </>
                )}
              </>
            )}
        </section>
      </div>
    </Screen>
  );
}
