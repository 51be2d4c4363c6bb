import type { TestCard } from "../../engine/answers/test-card.ts";
import { useWords } from "../../words/use-words.ts";

interface BestTurnsProps {
  readonly sweep: NonNullable<TestCard["sweep"]>;
  readonly turns: number | null;
  readonly onTurns: (turns: number) => void;
  readonly onKeep: (turns: number, outcome: string) => void;
  readonly busy: boolean;
}

/** Where the idle was best, a quarter turn at a time; the outcome follows from it. */
export function BestTurns({ sweep, turns, onTurns, onKeep, busy }: BestTurnsProps) {
  const words = useWords().cards;
  const { quarters } = sweep;
  const at = quarters.findIndex((each) => each.turns === (turns ?? sweep.now));
  const here = quarters[at]!;
  const text = words.turns(here.text, here.turns);
  const move = (by: number) => onTurns(quarters[at + by]!.turns);
  return (
    <section class="stack">
      <span class="small">{words.best}</span>
      <div class="stepper">
        <button type="button" class="button" disabled={at === 0} onClick={() => move(-1)}>
          {words.quarterLess}
        </button>
        <output class="value">{text}</output>
        <button type="button" class="button" disabled={at === quarters.length - 1} onClick={() => move(1)}>
          {words.quarterMore}
        </button>
      </div>
      <button
        type="button"
        class="button main"
        disabled={busy}
        onClick={() => onKeep(here.turns, here.outcome)}
      >
        {words.keepBest(text)}
      </button>
    </section>
  );
}
