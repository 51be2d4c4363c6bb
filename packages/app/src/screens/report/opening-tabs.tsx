import { useWords } from "../../words/use-words.ts";
import { isAnswered, type ReportDraft, seenAt } from "./draft.ts";
import { SignDrawing } from "./drawing.tsx";
import { OPTIONAL_OPENING, REPORT_OPENINGS, type ReportOpening } from "./sign-choices.ts";

interface OpeningTabsProps {
  readonly draft: ReportDraft;
  readonly onGo: (opening: ReportOpening) => void;
}

/** The throttle openings, each with a drawing of what it did there: the ride as it is told so far. */
export function OpeningTabs({ draft, onGo }: OpeningTabsProps) {
  const words = useWords().report;
  return (
    <nav class="openings" aria-label={words.openings}>
      {REPORT_OPENINGS.map((opening) => {
        const [seen] = seenAt(draft, opening);
        const done = isAnswered(draft, opening);
        const optional = opening === OPTIONAL_OPENING && !done;
        return (
          <button
            key={opening}
            type="button"
            class={[done && "done", optional && "may"].filter(Boolean).join(" ") || undefined}
            aria-current={draft.page === opening ? "step" : undefined}
            onClick={() => onGo(opening)}
          >
            <span class="fraction">{words.at[opening]}</span>
            {done && <SignDrawing sign={seen ?? null} />}
          </button>
        );
      })}
    </nav>
  );
}
