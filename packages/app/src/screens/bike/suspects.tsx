import type { Advice } from "@jetwright/core";
import { useWords } from "../../words/use-words.ts";

/** Suspects said outright; the rest is folded. */
const OUTRIGHT = 2;

/** What besides the jets may stand behind it, in words. */
export function Suspects({ suspects }: Pick<Advice, "suspects">) {
  const words = useWords().bike;
  if (suspects.length === 0) return null;
  const rest = suspects.slice(OUTRIGHT);
  return (
    <div>
      {suspects.slice(0, OUTRIGHT).map(({ fault, words: what, chance }) => (
        <p key={fault}>{words.suspect(what, chance)}</p>
      ))}
      {rest.length > 0 && (
        <details>
          <summary>{words.suspectsMore}</summary>
          <ul>
            {rest.map(({ fault, words: what }) => (
              <li key={fault}>{what}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
