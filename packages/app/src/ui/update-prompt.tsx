import { useEffect, useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import { useWords } from "../words/use-words.ts";

/** Screens on which work is open: there the prompt waits. */
const OPEN_WORK = /\/(report|test|check|change|new|air|next)(\/|$)/;

/**
 * Says that a new version is there. It is loaded on the person's tap and never by itself: a tab that did not ask
 * stays on the version it has, also when another tab loads the new one.
 */
export function UpdatePrompt() {
  const words = useWords().update;
  const [path] = useLocation();
  const [load, setLoad] = useState<(() => void) | null>(null);
  useEffect(() => {
    if (!("serviceWorker" in navigator)) return;
    let asked = false;
    let off = false;
    void import("virtual:pwa-register").then(({ registerSW }) => {
      const update = registerSW({
        onNeedRefresh: () => {
          if (off) return;
          setLoad(() => () => {
            asked = true;
            void update(true);
          });
        },
        onNeedReload: () => {
          if (asked) location.reload();
          else if (!off) setLoad(() => () => location.reload());
        },
      });
    });
    return () => {
      off = true;
    };
  }, []);
  if (load === null || OPEN_WORK.test(path)) return null;
  return (
    <aside class="update no-print" role="status">
      <p>
        <b>{words.there}</b> {words.hint}
      </p>
      <button type="button" class="button" onClick={load}>
        {words.load}
      </button>
      <button type="button" class="button plain" onClick={() => setLoad(null)}>
        {words.later}
      </button>
    </aside>
  );
}
