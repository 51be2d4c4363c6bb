import { Link } from "wouter-preact";
import { copyDue } from "../engine/answers/copy/copy-due.ts";
import { usePreferences } from "../preferences/use-preferences.ts";
import { useAnswer } from "../store/shop.ts";
import { useWords } from "../words/use-words.ts";

/** Says that the last copy is old, with the way to make one; nothing while it is young. */
export function CopyReminder() {
  const words = useWords().backup;
  const [{ lastCopyAt }] = usePreferences();
  const state = useAnswer("copyState", { lastCopyAt });
  if (state === null || !copyDue(state, Date.now())) return null;
  return (
    <aside class="caution">
      <p>
        {lastCopyAt === null ? words.dueNever : words.due}: {words.dueWords(state.since)}
      </p>
      <Link class="row" href="/backup">
        {words.dueDo}
      </Link>
    </aside>
  );
}
