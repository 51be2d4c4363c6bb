import type { Look } from "../../engine/answers/look-over.ts";
import type { Draft, Shop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import type { Words } from "../../words/en.ts";

/**
 * Keeps what a look found, or takes it back (`what` null); an answer given before it is struck with it. Says so, and
 * offers the way back; that it could not be kept is said too.
 */
export async function keepLook(
  shop: Shop,
  words: Words["cards"],
  bike: string,
  { id, found }: Look,
  what: "sound" | "faulty" | null,
  fault: string | null,
): Promise<void> {
  const struck = (record: string): Draft => ({ kind: "record-struck", bike, body: { record } });
  const drafts: readonly Draft[] = [
    ...(found === null ? [] : [struck(found.record)]),
    ...(what === null
      ? []
      : [
          {
            kind: "check-done" as const,
            bike,
            body: { check: id, found: what, ...(fault !== null && { fault }) },
          },
        ]),
  ];
  if (drafts.length === 0) return;
  const kept = await shop.keep(...drafts);
  if (!kept.ok) {
    say(kept.detail);
    return;
  }
  say(words.kept, {
    words: words.undo,
    act: () => {
      void shop
        .keep(...kept.value.map(struck))
        .then((undone) => say(undone.ok ? words.undone : undone.detail));
    },
  });
}
