import type { RideForm } from "../../engine/answers/ride-form.ts";
import { useWords } from "../../words/use-words.ts";
import { markMore, type ReportDraft } from "./draft.ts";

interface MoreSignsProps {
  readonly form: RideForm;
  readonly draft: ReportDraft;
  readonly onChange: (to: (before: ReportDraft) => ReportDraft) => void;
}

/** Every other sign a ride can show, section by section: there, not there, or nothing said. */
export function MoreSigns({ form, draft, onChange }: MoreSignsProps) {
  const words = useWords().report;
  return (
    <details>
      <summary>
        <span>
          {words.more}
          <span class="small quiet more-hint">{words.moreHint}</span>
        </span>
      </summary>
      {form.more.map(({ words: section, signs }) => {
        const said = signs.filter(({ id }) => draft.more[id] !== undefined).length;
        return (
          <details key={section} class="inner">
            <summary>
              <span>
                {section} {words.counted(said)}
              </span>
            </summary>
            <ul>
              {signs.map(({ id, words: name, description }) => (
                <li key={id} class="sign-more">
                  <span>
                    <strong>{name}</strong>
                    <span class="small quiet more-hint">{description}</span>
                  </span>
                  <span class="choices">
                    {([true, false] as const).map((there) => (
                      <button
                        key={String(there)}
                        type="button"
                        class="choice"
                        aria-pressed={draft.more[id] === there}
                        aria-label={there ? `${name}: ${words.there}` : words.notThereOf(name)}
                        onClick={() => onChange((before) => markMore(before, id, there))}
                      >
                        {there ? words.there : words.notThere}
                      </button>
                    ))}
                  </span>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </details>
  );
}
