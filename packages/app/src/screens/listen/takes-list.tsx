import { useEffect, useRef, useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { DIGITS } from "../../engine/answers/listen/figure-digits.ts";
import type { KeptTake } from "../../engine/answers/listen/sound-engine.ts";
import { dayText } from "../../preferences/day.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";

interface TakesListProps {
  readonly bike: string;
  readonly takes: readonly KeptTake[];
}

/** The takes on record, with the sound of those whose sound was kept. */
export function TakesList({ bike, takes }: TakesListProps) {
  const words = useWords().listen;
  const figure = useFigure();
  const [preferences] = usePreferences();
  if (takes.length === 0) return null;
  const short = ({ figures }: KeptTake): string =>
    (["idleRpm", "hangSeconds", "undershootPercent"] as const)
      .flatMap((name) => {
        const value = figures[name];
        if (value === undefined) return [];
        return [`${words.figures[name].words} ${words.figures[name].unit(figure(value, DIGITS[name]))}`];
      })
      .join(", ");
  return (
    <section class="stack">
      <h2>{words.takes}</h2>
      <ul class="rows">
        {takes.map((take) => (
          <li key={take.record} class="stack take">
            <span>
              <strong>
                {dayText(take.at, preferences)}
                {take.good && ` · ${words.goodMark}`}
              </strong>
              <span class="small quiet tries-of">{short(take)}</span>
            </span>
            <Link class="button plain" href={bikeAddress(bike, `heard/${encodeURIComponent(take.record)}`)}>
              {words.see}
            </Link>
            {take.clip !== null && <Clip bike={bike} record={take.record} hash={take.clip} at={take.at} />}
          </li>
        ))}
      </ul>
    </section>
  );
}

interface ClipProps {
  readonly bike: string;
  readonly record: string;
  readonly hash: string;
  readonly at: number;
}

/** The sound of a take: played, stopped, deleted. */
function Clip({ bike, record, hash, at }: ClipProps) {
  const words = useWords().listen;
  const shop = useShop();
  const playing = useRef<HTMLAudioElement | null>(null);
  const [on, setOn] = useState(false);
  const stop = () => {
    if (playing.current !== null) {
      playing.current.pause();
      URL.revokeObjectURL(playing.current.src);
    }
    playing.current = null;
    setOn(false);
  };
  useEffect(() => stop, []);

  async function play() {
    const sound = await shop.database.photos.get(hash).catch(() => undefined);
    if (sound === undefined) {
      say(words.notHere);
      return;
    }
    const audio = new Audio(URL.createObjectURL(sound));
    playing.current = audio;
    audio.onended = stop;
    setOn(true);
    await audio.play().catch(stop);
  }

  /** The record is written again without its sound: what nothing names is deleted a day later, here and everywhere. */
  async function drop() {
    stop();
    const take = await shop.engine.ask("takeHeard", { bike, record });
    if (!take.ok) {
      say(take.detail);
      return;
    }
    const { clip: _, ...body } = take.value.body;
    const kept = await keepUndoable(
      shop,
      bike,
      words,
      { kind: "record-struck", body: { record } },
      { kind: "sound-heard", at, body },
    );
    if (kept.ok) say(words.dropped, kept.value);
    else say(kept.detail);
  }

  return (
    <div class="choices">
      <button type="button" class="choice" onClick={() => (on ? stop() : void play())}>
        {on ? words.stopSound : words.play}
      </button>
      <button type="button" class="choice" onClick={() => void drop()}>
        {words.drop}
      </button>
    </div>
  );
}
