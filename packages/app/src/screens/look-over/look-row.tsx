import { useState } from "preact/hooks";
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
  readonly onAnswer: (what: "sound" | "faulty", fault: string | null) => void;
  readonly onSkip: () => void;
}

/** One look: how it is made, in place, and what it found, at one tap; which fault, where it finds several, at a second. */
export function LookRow({ look, place, skipped, onAnswer, onSkip }: LookRowProps) {
  const words = useWords().lookOver;
  const [asking, setAsking] = useState(false);
  const [open, setOpen] = useState(false);
  const what = look.found?.what ?? null;
  const wrong = () => {
    if (look.faults.length > 1) setAsking(true);
    else onAnswer("faulty", look.faults[0]!.id);
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
                  onAnswer("faulty", id);
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
            onClick={() => what !== "sound" && onAnswer("sound", null)}
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
            onClick={onSkip}
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
