import { useRef, useState } from "preact/hooks";
import type { Look } from "../../engine/answers/look-over.ts";
import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";
import { Countdown } from "../timer/countdown.tsx";
import { checkTimers } from "../timer/timers.ts";

interface LookRowProps {
  readonly look: Look;
  /** Its place in the working order, from 1. */
  readonly place: number;
  readonly skipped: boolean;
  /** Resolves once it is on the disk; null: left out. */
  readonly onAnswer: (what: "sound" | "faulty" | null, fault: string | null) => Promise<void>;
}

/** One look: how it is made, in place, and what it found, at one tap; which fault, where it finds several, at a second. */
export function LookRow({ look, place, skipped, onAnswer }: LookRowProps) {
  const words = useWords().lookOver;
  const [asking, setAsking] = useState(false);
  const [open, setOpen] = useState(false);
  const busy = useRef(false);
  const what = look.found?.what ?? null;
  /** A second tap before the first is kept would be a second answer. */
  const answer = (...given: Parameters<typeof onAnswer>) => {
    if (busy.current) return;
    busy.current = true;
    void onAnswer(...given).finally(() => {
      busy.current = false;
    });
  };
  const wrong = () => {
    if (look.faults.length > 1) setAsking(true);
    else answer("faulty", look.faults[0]!.id);
  };
  const name = (choice: string) => words.of(choice, look.words);
  return (
    <li>
      <h2>
        <span>{place}</span> <span>{look.words}</span>
      </h2>
      <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary aria-label={name(words.how)}>{words.how}</summary>
        {open && (
          <div class="stack how-to">
            <ol class="steps how">
              {look.steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
            {checkTimers(look.id).map(
              (timer) => timer.kind === "countdown" && <Countdown key={timer.words} timer={timer} />,
            )}
            <p>
              <b>{words.mend}</b> {look.mend}
            </p>
            {look.cautions.length > 0 && <Cautions ids={look.cautions} />}
          </div>
        )}
      </details>
      {asking ? (
        <fieldset class="stack">
          <legend>{words.which}</legend>
          <div class="choices down">
            {look.faults.map(({ id, words: fault }) => (
              <button
                key={id}
                type="button"
                class="choice"
                onClick={() => {
                  setAsking(false);
                  answer("faulty", id);
                }}
              >
                {fault}
              </button>
            ))}
            <button type="button" class="button plain" onClick={() => setAsking(false)}>
              {words.back}
            </button>
          </div>
        </fieldset>
      ) : (
        <div class="choices">
          <button
            type="button"
            class="choice"
            aria-label={name(words.fine)}
            aria-pressed={what === "sound"}
            onClick={() => what !== "sound" && answer("sound", null)}
          >
            {words.fine}
          </button>
          <button
            type="button"
            class="choice"
            aria-label={name(words.notFine)}
            aria-pressed={what === "faulty"}
            onClick={wrong}
          >
            {words.notFine}
          </button>
          <button
            type="button"
            class="choice"
            aria-label={name(words.skip)}
            aria-pressed={skipped}
            onClick={() => answer(null, null)}
          >
            {words.skip}
          </button>
        </div>
      )}
      {what === "faulty" && look.found?.fault != null && <p class="warn">{look.found.fault}</p>}
      {what === "mended" && <p>{words.mended}</p>}
    </li>
  );
}
