import { useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import type { TestCard as TestCardOf } from "../../engine/answers/test-card.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/report.css";
import "../../styles/cards.css";
import { WARNING_SIGNS } from "../report/sign-choices.ts";
import { StopBlock, WarningBlock } from "../report/stop-block.tsx";
import { Countdown } from "../timer/countdown.tsx";
import { HangWatch } from "../timer/hang-watch.tsx";
import { middleTry, testTimers } from "../timer/timers.ts";
import { keepResult } from "../work-card/keep-result.ts";
import { TickedSteps } from "../work-card/ticked-steps.tsx";
import { readWork, type Work } from "../work-card/work.ts";
import { WorkHead } from "../work-card/work-head.tsx";
import { BestTurns } from "./best-turns.tsx";
import { LookPhoto } from "./look-photo.tsx";

interface TestCardProps {
  readonly params: { readonly bike: string; readonly test: string; readonly opening?: string };
}

/** One test on the running engine, to be worked from with dirty hands. */
export const TestCard = ({ params }: TestCardProps) => (
  <Card key={`${params.bike} ${params.test}`} params={params} />
);

function Card({ params }: TestCardProps) {
  const { bike, test } = params;
  const words = useWords().cards;
  const shop = useShop();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const [warned, setWarned] = useState<{ readonly sign: string; readonly stop: boolean } | null>(null);
  const work = useDraft<Work>(shop.database, `work:${bike}:${test}`, readWork);
  const answer = useAnswer("testCard", {
    bike,
    test,
    opening: work.value?.opening ?? params.opening ?? null,
  });
  const bikePage = `/bike/${encodeURIComponent(bike)}`;

  if (answer === null || work.value === null) {
    return (
      <Screen title="…">
        <p class="quiet">…</p>
      </Screen>
    );
  }
  if (!answer.ok) {
    return (
      <Screen title={words.what} back={{ to: bikePage, words: words.back }}>
        <p>{answer.detail}</p>
      </Screen>
    );
  }
  const card = answer.value;
  const now = work.value;
  const bar = (
    <>
      <Link href={bikePage}>{warned === null ? words.back : words.nextStep}</Link>
      <Link href={`${bikePage}/marks`}>{words.marks}</Link>
    </>
  );

  async function keep(outcome: string, turns: number | null) {
    if (busy) return;
    setBusy(true);
    const numbers = {
      ...(turns === null ? {} : { bestTurns: turns }),
      ...Object.fromEntries(
        testTimers(card.id).flatMap((timer) => {
          const middle = timer.kind === "hang" ? middleTry(now.tries[timer.number] ?? []) : null;
          return timer.kind === "hang" && middle !== null ? [[timer.number, Math.round(middle) / 1000]] : [];
        }),
      ),
    };
    const kept = await keepResult(shop, words, "test-done", bike, {
      test: card.id,
      ...(card.opening === null ? {} : { opening: card.opening }),
      outcome,
      ...(Object.keys(numbers).length === 0 ? {} : { numbers }),
    });
    setBusy(false);
    if (!kept) return;
    work.clear();
    const found = card.outcomes.find(({ id }) => id === outcome);
    if (found?.stop || WARNING_SIGNS.includes(found?.sign ?? "")) {
      setWarned({ sign: found!.sign!, stop: found!.stop });
      window.scrollTo(0, 0);
    } else go(bikePage);
  }

  /** A word to whoever reads on, and then the other ways. */
  async function couldNot() {
    const text = words.couldNotNote(card.words);
    if (!(await keepResult(shop, words, "note", bike, { text }))) return;
    work.clear();
    go(`${bikePage}/next`);
  }

  if (warned !== null) {
    return (
      <Screen title={card.words} bar={bar}>
        {warned.stop ? <StopBlock signs={[warned.sign]} /> : <WarningBlock />}
      </Screen>
    );
  }
  return (
    <Screen title={card.words} aside={words.minutes(card.minutes)} bar={bar}>
      {card.ridden && <p>{words.noPhone}</p>}
      {card.openings.length > 1 && (
        <Where card={card} onWhere={(opening) => work.change((before) => ({ ...before, opening }))} />
      )}
      <WorkHead cautions={card.cautions} tools={card.tools} />
      <section class="work">
        <h2>{words.steps}</h2>
        <TickedSteps
          steps={card.steps}
          ticked={now.ticked}
          onTick={(ticked) => work.change((before) => ({ ...before, ticked }))}
        />
      </section>
      {testTimers(card.id).map((timer) =>
        timer.kind === "countdown" ? (
          <Countdown key={timer.words} timer={timer} />
        ) : (
          <HangWatch
            key={timer.words}
            timer={timer}
            tries={now.tries[timer.number] ?? []}
            onTries={(tries) =>
              work.change((before) => ({ ...before, tries: { ...before.tries, [timer.number]: tries } }))
            }
          />
        ),
      )}
      <LookPhoto bike={bike} test={card.id} of={card.words} />
      <section class="stack work">
        <h2>{words.what}</h2>
        {card.sweep !== null && (
          <>
            <BestTurns
              sweep={card.sweep}
              turns={now.turns}
              onTurns={(turns) => work.change((before) => ({ ...before, turns }))}
              onKeep={(turns, outcome) => void keep(outcome, turns)}
              busy={busy}
            />
            <Link class="button" href={`${bikePage}/sweep`}>
              {words.byEar}
            </Link>
            <p class="small quiet">{words.orWithout}</p>
          </>
        )}
        <div class="choices down">
          {card.outcomes.map(({ id, words: name }) => (
            <button key={id} type="button" class="choice" disabled={busy} onClick={() => void keep(id, null)}>
              {name}
            </button>
          ))}
        </div>
        <button type="button" class="button plain" disabled={busy} onClick={() => void couldNot()}>
          {words.couldNot}
        </button>
      </section>
    </Screen>
  );
}

function Where({ card, onWhere }: { readonly card: TestCardOf; readonly onWhere: (to: string) => void }) {
  const words = useWords();
  const names: Readonly<Record<string, string>> = words.report.at;
  return (
    <Choice
      label={words.cards.where}
      options={card.openings.map((value) => ({ value, words: names[value] ?? value }))}
      value={card.opening}
      onChoose={onWhere}
    />
  );
}
