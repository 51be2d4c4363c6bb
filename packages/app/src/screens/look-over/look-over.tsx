import { useLocation } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/cards.css";
import "../../styles/look-over.css";
import type { Look } from "../../engine/answers/look-over.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { WorkHead } from "../work-card/work-head.tsx";
import { type Begun, NOT_BEGUN, readBegun } from "./begun.ts";
import { keepLook } from "./keep-look.ts";
import { LookRow } from "./look-row.tsx";

interface LookOverProps {
  readonly params: { readonly bike: string };
}

/** Clocks of records are cut to the second: what is kept in the first one is its own. */
const MINUTE = 60_000;

/** A bike looked over in one go: every look with its answer, kept at each tap, and resumed where it was left. */
export const LookOver = ({ params }: LookOverProps) => <Card key={params.bike} bike={params.bike} />;

function Card({ bike }: { readonly bike: string }) {
  const { lookOver: words, cards } = useWords();
  const shop = useShop();
  const [, go] = useLocation();
  const begun = useDraft<Begun>(shop.database, `look-over:${bike}`, (stored) =>
    readBegun(stored, Date.now()),
  );
  const { looks, from, skipped } = begun.value ?? NOT_BEGUN;
  const card = useAnswer("lookOver", { bike, looks, from });
  const back = { to: bikeAddress(bike), words: cards.back };
  if (card === null || begun.value === null) {
    return (
      <Screen title={words.title} back={back}>
        <p class="quiet">…</p>
      </Screen>
    );
  }
  if (!card.ok) {
    return (
      <Screen title={words.title} back={back}>
        <p>{card.detail}</p>
      </Screen>
    );
  }
  const rows = card.value.looks;
  const left = rows.filter(({ id, found }) => found === null && !skipped.includes(id)).length;
  const wrong = rows.filter(({ found }) => found?.what === "faulty");

  /** The list stands still from the first tap on, whatever the advice is by then. */
  const begin = (leave: (skipped: readonly string[]) => readonly string[]) =>
    begun.change((before) => {
      const now =
        before.looks.length > 0
          ? before
          : { ...NOT_BEGUN, looks: rows.map(({ id }) => id), from: Date.now() - MINUTE };
      return { ...now, skipped: leave(now.skipped) };
    });
  const answer = (look: Look, what: "sound" | "faulty" | null, fault: string | null): Promise<void> => {
    begin((left) => [...left.filter((id) => id !== look.id), ...(what === null ? [look.id] : [])]);
    return keepLook(shop, cards, bike, look, what, fault);
  };
  const done = () => {
    begun.clear();
    go(bikeAddress(bike, "next"));
  };

  return (
    <Screen title={words.title} aside={words.about(card.value.minutes)} back={back}>
      <p class="quiet">{words.intro}</p>
      <WorkHead cautions={card.value.cautions} tools={card.value.tools} />
      <ol class="looks">
        {rows.map((look, index) => (
          <LookRow
            key={look.id}
            look={look}
            place={index + 1}
            skipped={look.found === null && skipped.includes(look.id)}
            onAnswer={(what, fault) => answer(look, what, fault)}
          />
        ))}
      </ol>
      <section class="stack" role="status">
        <p>
          {left > 0
            ? words.left(left)
            : wrong.length === 0
              ? words.allFine
              : words.found(wrong.map(({ found, words: name }) => found?.fault ?? name))}
        </p>
      </section>
      <button type="button" class={left > 0 ? "button" : "button main"} onClick={done}>
        {left > 0 ? words.enough : words.next}
      </button>
    </Screen>
  );
}
