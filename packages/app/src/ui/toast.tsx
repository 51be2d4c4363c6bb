import { useEffect } from "preact/hooks";
import { useWatched, watched } from "../store/value.ts";
import "../styles/toast.css";

interface Said {
  readonly words: string;
  readonly undo?: { readonly words: string; readonly act: () => void };
}

const said = watched<Said | null>(null);

/** Says one sentence at the foot of the screen, with an undo where there is one. */
export const say = (words: string, undo?: Said["undo"]): void => said.set(undo ? { words, undo } : { words });

/** Long enough to read; with an undo, to reach it. */
const SHOWN_FOR = 4000;
const SHOWN_FOR_UNDO = 8000;

export function Toast() {
  const now = useWatched(said);
  useEffect(() => {
    if (now === null) return;
    const timer = setTimeout(() => said.set(null), now.undo ? SHOWN_FOR_UNDO : SHOWN_FOR);
    return () => clearTimeout(timer);
  }, [now]);
  return (
    <div role="status" aria-live="polite">
      {now !== null && (
        <div class="toast">
          <span>{now.words}</span>
          {now.undo && (
            <button
              type="button"
              class="button"
              onClick={() => {
                now.undo!.act();
                said.set(null);
              }}
            >
              {now.undo.words}
            </button>
          )}
        </div>
      )}
    </div>
  );
}
