import { useEffect, useRef, useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import type { ScrewSweep } from "../../engine/answers/listen/screw-sweep.ts";
import { useFigure, useTurns } from "../../preferences/use-figure.ts";
import { type Draft, useAnswer, useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/cards.css";
import "../../styles/listen.css";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";
import { useWakeLock } from "../timer/wake-lock.ts";
import type { LiveSpeed } from "./sound-messages.ts";
import { MOST_TURNS, readSweepDraft, type SweepDraft } from "./sweep-draft.ts";
import { SweepPicture } from "./sweep-picture.tsx";
import { SweepResult } from "./sweep-result.tsx";
import { useListener } from "./use-listener.ts";

/** An idle is marked when it has held still for so long, and not sooner after a turn than it takes to settle; seconds. */
const HOLD = 6;
const SETTLE = 10;
/** Speeds further apart than this are not one engine's idle under one screw: the firing was counted wrongly. */
const OTHER_SPEED = 1.45;
/** Where a screw usually stands, when nobody has counted. */
const USUAL_TURNS = 1.5;

/** The small screw turned step by step while the phone hears where the idle is best. */
export function Sweep({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().sweep;
  const { database } = useShop();
  const draft = useDraft<SweepDraft>(database, `sweep:${bike}`, readSweepDraft);
  const answer = useAnswer("screwSweep", { bike, marks: draft.value?.marks ?? [] });
  const back = { to: bikeAddress(bike, "listen"), words: words.back };
  if (answer === null || draft.value === null || !answer.ok || answer.value.screw === null) {
    return (
      <Screen title={words.title} back={back}>
        {answer?.ok === false && <p>{answer.detail}</p>}
        {answer?.ok && answer.value.screw === null && (
          <>
            <p>{words.noSide}</p>
            <Link class="button main" href={bikeAddress(bike, "describe")}>
              {words.describe}
            </Link>
          </>
        )}
      </Screen>
    );
  }
  return (
    <Screen title={words.title} back={back}>
      <AtWork
        bike={bike}
        sweep={answer.value}
        screw={answer.value.screw}
        draft={draft.value}
        change={draft.change}
        clear={draft.clear}
      />
    </Screen>
  );
}

interface AtWorkProps {
  readonly bike: string;
  readonly sweep: ScrewSweep;
  readonly screw: "air" | "fuel";
  readonly draft: SweepDraft;
  readonly change: (to: (before: SweepDraft) => SweepDraft) => void;
  readonly clear: () => void;
}

function AtWork({ bike, sweep, screw, draft, change, clear }: AtWorkProps) {
  const allWords = useWords();
  const words = allWords.sweep;
  const figure = useFigure();
  const turnsOf = useTurns();
  const shop = useShop();
  const [, go] = useLocation();
  const [live, setLive] = useState<LiveSpeed | null>(null);
  const [busy, setBusy] = useState(false);
  const [said, setSaid] = useState<string | null>(null);
  /** Seconds of sound at which the screw was last turned; null: its idle is marked. */
  const since = useRef<number | null>(0);
  const { microphone, trouble, open, close, tell } = useListener((message) => {
    if (message.say === "speed") setLive(message);
  });
  useWakeLock(microphone !== null);
  const start = draft.start ?? sweep.fitted ?? USUAL_TURNS;
  const at = draft.at ?? start;
  const { marks } = draft;

  useEffect(() => {
    const { still = null, seconds = 0 } = live ?? {};
    if (still === null || since.current === null || seconds - since.current < SETTLE || still.seconds < HOLD)
      return;
    const first = marks[0]?.rpm ?? still.rpm;
    if (Math.max(first / still.rpm, still.rpm / first) > OTHER_SPEED) {
      setSaid(words.octave);
      return;
    }
    since.current = null;
    change((before) => ({
      ...before,
      start,
      at,
      marks: [...before.marks, { turns: at, rpm: still.rpm, error: still.error }],
    }));
    setSaid(words.marked(turnsOf(at), figure(Math.round(still.rpm / 10) * 10, 0)));
    navigator.vibrate?.(200);
  }, [live]);

  function turn(to: number) {
    change((before) => ({ ...before, start: before.start ?? start, at: to }));
    if (microphone === null) return;
    since.current = live?.seconds ?? 0;
    setSaid(null);
    tell({ say: "turned" });
  }

  async function listen() {
    since.current = 0;
    setLive(null);
    setSaid(null);
    await open((rate) => ({ say: "begin", engine: sweep.engine, rate, whole: false }));
  }

  async function keep(turnsNow: number) {
    const { result, test } = sweep;
    if (result === null || busy) return;
    setBusy(true);
    const now = Date.now();
    const drafts: Omit<Draft, "bike">[] = [
      {
        kind: "test-done",
        at: now - 1000,
        body: { test, outcome: result.outcome, numbers: result.numbers },
      },
    ];
    const counted = (turnsOut: number) => ({ screw: { turnsOut, how: "measured" } });
    // The sweep speaks of the screw as it was: that has to be on record before it.
    if (sweep.fitted !== start)
      drafts.unshift({ kind: "setup-fitted", at: now - 2000, body: counted(start) });
    if (turnsNow !== start) drafts.push({ kind: "setup-fitted", at: now, body: counted(turnsNow) });
    const kept = await keepUndoable(shop, bike, words, ...drafts);
    setBusy(false);
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    close();
    clear();
    say(words.kept, kept.value);
    go(bikeAddress(bike, "next"));
  }

  const { step } = draft;
  const waiting =
    live?.still === null || live === null
      ? words.settling
      : words.holding(figure(Math.min(HOLD, live.still.seconds), 0), figure(HOLD, 0));
  return (
    <>
      <div class="caution stack">
        <p>{words.caution}</p>
        {microphone === null && (
          <>
            <p>{words.heat}</p>
            <p>{words.made}</p>
          </>
        )}
      </div>
      <p class="loud-line">{words.sides[screw]}</p>
      {microphone === null && <p>{words.guide}</p>}
      <section class="stack">
        <span class="small">{words.now}</span>
        <p class="needle">
          <span class="sweep-place">{words.out(turnsOf(at))}</span>
        </p>
        {marks.length === 0 && sweep.fitted === null && <p>{words.count}</p>}
        <span class="small">{words.turned}</span>
        <div class="choices">
          <button type="button" class="choice" disabled={at - step < 0} onClick={() => turn(at - step)}>
            {words.in(turnsOf(Math.max(0, at - step)))}
          </button>
          <button
            type="button"
            class="choice"
            disabled={at + step > MOST_TURNS}
            onClick={() => turn(at + step)}
          >
            {words.outTo(turnsOf(at + step))}
          </button>
        </div>
        {microphone !== null && (
          <>
            <p class="needle" aria-live="off">
              <span class="needle-figure">
                {live?.smooth == null ? "–" : figure(Math.round(live.smooth / 10) * 10, 0)}
              </span>
              <span class="quiet"> {words.rpm}</span>
            </p>
            <p role="status">{said ?? waiting}</p>
            {microphone.stillOn.length > 0 && (
              <p role="alert">{allWords.listen.stillOn(microphone.stillOn.join(", "))}</p>
            )}
          </>
        )}
        {trouble !== null && <p role="alert">{allWords.listen.troubles[trouble]}</p>}
        {microphone === null ? (
          <button type="button" class="button main" onClick={() => void listen()}>
            {words.start}
          </button>
        ) : (
          <button type="button" class="button plain" onClick={close}>
            {words.stop}
          </button>
        )}
        <Choice
          label={words.step}
          options={[
            { value: "0.25", words: words.quarter },
            { value: "0.125", words: words.eighth },
          ]}
          value={step === 0.25 ? "0.25" : "0.125"}
          onChoose={(value) => change((before) => ({ ...before, step: Number(value) }))}
        />
      </section>
      {marks.length > 0 && (
        <section class="stack">
          <h2>{words.marks}</h2>
          {marks.length > 1 && <SweepPicture marks={marks} reading={sweep.reading} />}
          <SweepResult sweep={sweep} start={start} at={at} busy={busy} onKeep={(turns) => void keep(turns)} />
          <table class="table">
            <thead>
              <tr>
                <th scope="col">{words.turns}</th>
                <th scope="col" class="number">
                  {words.idle}
                </th>
              </tr>
            </thead>
            <tbody>
              {marks.map((mark, i) => (
                <tr key={`${mark.turns} ${i}`}>
                  <th scope="row">{turnsOf(mark.turns)}</th>
                  <td class="number">{figure(Math.round(mark.rpm / 10) * 10, 0)}</td>
                </tr>
              ))}
            </tbody>
          </table>
          <div class="choices">
            <button
              type="button"
              class="choice"
              onClick={() => change((before) => ({ ...before, marks: before.marks.slice(0, -1) }))}
            >
              {words.back1}
            </button>
            <button type="button" class="choice" onClick={clear}>
              {words.again}
            </button>
          </div>
        </section>
      )}
    </>
  );
}
