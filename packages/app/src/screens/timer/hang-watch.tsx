import { useState } from "preact/hooks";
import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import { type HangWatch as HangWatchOf, middleTry } from "./timers.ts";
import { useElapsed } from "./use-ticks.ts";
import { useWakeLock } from "./wake-lock.ts";

interface HangWatchProps {
  readonly timer: HangWatchOf;
  /** Milliseconds of each try. */
  readonly tries: readonly number[];
  readonly onTries: (tries: readonly number[]) => void;
}

/** A stop-watch with one large key: a tap on letting go, a tap when it is back at idle. */
export function HangWatch({ timer, tries, onTries }: HangWatchProps) {
  const words = useWords().cards;
  const figure = useFigure();
  const tenths = (milliseconds: number) => figure(milliseconds / 1000, 1);
  const [start, setStart] = useState<number | null>(null);
  const elapsed = useElapsed(start);
  useWakeLock(start !== null);
  const middle = middleTry(tries);
  const tap = () => {
    if (start === null) {
      setStart(Date.now());
      return;
    }
    onTries([...tries, Date.now() - start]);
    setStart(null);
  };
  return (
    <section class="timer">
      <span class="small">{words.timers[timer.words]}</span>
      <button type="button" class={start === null ? "button watch" : "button main watch"} onClick={tap}>
        <span class="timer-figures">{tenths(elapsed)}</span>
        <span>{start === null ? words.letGo : words.atIdle}</span>
      </button>
      {middle !== null && (
        <div class="row tries">
          <span>
            <span class="small quiet">
              {words.tries}: {tries.map((ms) => words.seconds(tenths(ms))).join(" · ")}
            </span>
            <span class="middle">
              {words.middle}: {words.seconds(tenths(middle))}
            </span>
          </span>
          <button type="button" class="button plain drop" onClick={() => onTries(tries.slice(0, -1))}>
            {words.dropTry}
          </button>
        </div>
      )}
    </section>
  );
}
