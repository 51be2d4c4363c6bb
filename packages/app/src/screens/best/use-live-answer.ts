import { useEffect, useRef, useState } from "preact/hooks";
import type { AnswerOf, ArgumentsOf, Question } from "../../engine/protocol.ts";
import { useShop } from "../../store/shop.ts";
import { useWatched } from "../../store/value.ts";

/** A question still at work after this long is overtaken by a newer one. */
const OVERTAKE = 120;

/**
 * The answer to a question whose givens move under a finger: asked once a frame at most, one at a time; a newer asking
 * waits for the answer at work, or overtakes it when that takes long. The last answer stays until the next is there.
 */
export function useLiveAnswer<Q extends Question>(question: Q, given: ArgumentsOf<Q>): AnswerOf<Q> | null {
  const shop = useShop();
  const version = useWatched(shop.version);
  const [answer, setAnswer] = useState<AnswerOf<Q> | null>(null);
  const [broken, setBroken] = useState<Error | null>(null);
  const wanted = useRef<string | null>(null);
  const since = useRef<number | null>(null);
  const asked = JSON.stringify(given);

  useEffect(() => {
    let current = true;
    wanted.current = asked;
    const ask = () => {
      const now = wanted.current;
      if (!current || now === null) return;
      const started = performance.now();
      wanted.current = null;
      since.current = started;
      shop.engine.ask(question, JSON.parse(now) as ArgumentsOf<Q>).then(
        (next) => {
          if (since.current === started) since.current = null;
          // Null: overtaken, the newer one will answer.
          if (next !== null) setAnswer(next);
        },
        (bug: Error) => setBroken(bug),
      );
    };
    const wait = () => {
      if (!current) return;
      if (since.current === null || performance.now() - since.current > OVERTAKE) ask();
      else requestAnimationFrame(wait);
    };
    const frame = requestAnimationFrame(wait);
    return () => {
      current = false;
      cancelAnimationFrame(frame);
    };
  }, [shop, question, asked, version]);

  if (broken !== null) throw broken;
  return answer;
}
