import { useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { typedNumber } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/report.css";
import "../../styles/cards.css";
import { Countdown } from "../timer/countdown.tsx";
import { checkTimers } from "../timer/timers.ts";
import { keepResult } from "../work-card/keep-result.ts";
import { TickedSteps } from "../work-card/ticked-steps.tsx";
import { readWork, type Work } from "../work-card/work.ts";
import { WorkHead } from "../work-card/work-head.tsx";
import { FuelFlow } from "./fuel-flow.tsx";

type Found = "sound" | "faulty" | "mended";

interface CheckCardProps {
  readonly params: { readonly bike: string; readonly check: string };
}

/** One mechanical check, to be worked from with dirty hands: sound, faulty or mended. */
export const CheckCard = ({ params }: CheckCardProps) => (
  <Card key={`${params.bike} ${params.check}`} params={params} />
);

function Card({ params }: CheckCardProps) {
  const { bike, check } = params;
  const words = useWords().cards;
  const shop = useShop();
  const [, go] = useLocation();
  const [busy, setBusy] = useState(false);
  const [asking, setAsking] = useState<"faulty" | "mended" | null>(null);
  const work = useDraft<Work>(shop.database, `work:${bike}:${check}`, readWork);
  const answer = useAnswer("checkCard", { bike, check });
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
      <Screen title={words.found} back={{ to: bikePage, words: words.back }}>
        <p>{answer.detail}</p>
      </Screen>
    );
  }
  const card = answer.value;
  const now = work.value;
  const { last } = card;

  async function keep(found: Found, fault: string | null) {
    if (busy) return;
    setBusy(true);
    const read = card.id === "fuel-flow" ? now.can.map(typedNumber) : [];
    const kept = await keepResult(shop, words, "check-done", bike, {
      check: card.id,
      found,
      ...(fault === null ? {} : { fault }),
      ...(read.every((ml) => ml === null) ? {} : { words: words.canWords(read) }),
    });
    setBusy(false);
    if (!kept) return;
    work.clear();
    go(bikePage);
  }
  /** A check for one thing needs no second tap; a mend is of what was found the last time. */
  const choose = (found: "faulty" | "mended") => {
    const known = found === "mended" && last?.found === "faulty" ? last.fault : null;
    if (known !== null) void keep(found, known);
    else if (card.faults.length === 1) void keep(found, card.faults[0]!.id);
    else setAsking(found);
  };

  return (
    <Screen
      title={card.words}
      aside={words.minutes(card.minutes)}
      bar={<Link href={bikePage}>{words.back}</Link>}
    >
      {last !== null && (
        <p class={last.found === "faulty" ? "warn" : "quiet"}>
          {words.last[last.found]}
          {last.words !== null && `, ${last.words}`}
        </p>
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
      {checkTimers(card.id).map(
        (timer) => timer.kind === "countdown" && <Countdown key={timer.words} timer={timer} />,
      )}
      {card.id === "fuel-flow" && (
        <FuelFlow
          can={now.can}
          onCan={(can) => work.change((before) => ({ ...before, can }))}
          enough={card.steps.find((step) => step.includes("ml")) ?? null}
        />
      )}
      <section class="work">
        <h2>{words.mend}</h2>
        <p>{card.mend}</p>
      </section>
      <section class="stack work">
        <h2>{asking === null ? words.found : words.which[asking]}</h2>
        <div class="choices down">
          {asking === null ? (
            <>
              <FoundButton
                words={words.sound}
                hint={words.soundHint}
                busy={busy}
                onTap={() => void keep("sound", null)}
              />
              <FoundButton
                words={words.faulty}
                hint={words.faultyHint}
                busy={busy}
                onTap={() => choose("faulty")}
              />
              <FoundButton
                words={words.mended}
                hint={words.mendedHint}
                busy={busy}
                onTap={() => choose("mended")}
              />
            </>
          ) : (
            <>
              {card.faults.map(({ id, words: name }) => (
                <FoundButton key={id} words={name} busy={busy} onTap={() => void keep(asking, id)} />
              ))}
              <button type="button" class="button plain" onClick={() => setAsking(null)}>
                {words.back}
              </button>
            </>
          )}
        </div>
      </section>
    </Screen>
  );
}

interface FoundButtonProps {
  readonly words: string;
  readonly hint?: string;
  readonly busy: boolean;
  readonly onTap: () => void;
}

function FoundButton({ words, hint, busy, onTap }: FoundButtonProps) {
  return (
    <button type="button" class="choice" disabled={busy} onClick={onTap}>
      <span>
        {words}
        {hint !== undefined && <span class="small quiet found-hint">{hint}</span>}
      </span>
    </button>
  );
}
