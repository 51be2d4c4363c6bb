import { useEffect, useState } from "preact/hooks";
import { useWords } from "../../words/use-words.ts";
import { type Countdown as CountdownOf, clockText } from "./timers.ts";
import { useElapsed } from "./use-ticks.ts";
import { useWakeLock } from "./wake-lock.ts";

/** Counts down in figures that can be read at arm's length; says and shakes when the time is up. */
export function Countdown({ timer }: { readonly timer: CountdownOf }) {
  const words = useWords().cards;
  const [start, setStart] = useState<number | null>(null);
  const elapsed = useElapsed(start);
  const whole = timer.seconds * 1000;
  const running = start !== null && elapsed < whole;
  const over = start !== null && elapsed >= whole;
  useWakeLock(running);
  useEffect(() => {
    // Browsers without it, and those that want a tap first, stay silent.
    if (over) navigator.vibrate?.([400, 150, 400]);
  }, [over]);
  return (
    <section class="timer">
      <span class="small">
        {words.timers[timer.words]}
        {timer.words === "settle" && ` (${words.timers.settleHint})`}
      </span>
      <div class="timer-face">
        <span class="timer-figures" role="timer">
          {clockText(start === null ? whole : whole - elapsed)}
        </span>
        <button type="button" class="button" onClick={() => setStart(running ? null : Date.now())}>
          {running ? words.stop : start === null ? words.start : words.again}
        </button>
      </div>
      <span class="small warn" role="status">
        {over ? words.over : ""}
      </span>
    </section>
  );
}
