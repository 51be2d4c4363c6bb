import { useWords } from "../../words/use-words.ts";
import type { ChangeDraft } from "./change-draft.ts";

interface ChoosePartsProps {
  readonly draft: ChangeDraft;
  readonly onChange: (draft: ChangeDraft) => void;
}

/** Free choice: which parts are changed. */
export function ChooseParts({ draft, onChange }: ChoosePartsProps) {
  const words = useWords().change;
  return (
    <>
      <p>{words.chooseHint}</p>
      <ul class="ticked">
        {draft.plan.parts.map(({ part }) => (
          <li key={part}>
            <label>
              <input
                type="checkbox"
                checked={draft.chosen.includes(part)}
                onChange={(event) => {
                  const others = draft.chosen.filter((one) => one !== part);
                  onChange({ ...draft, chosen: event.currentTarget.checked ? [...others, part] : others });
                }}
              />
              <span>{words.part(part, draft.plan.screw)}</span>
            </label>
          </li>
        ))}
      </ul>
    </>
  );
}
