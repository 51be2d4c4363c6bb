import { Choice } from "../../ui/choice.tsx";
import { useWords } from "../../words/use-words.ts";
import type { Seen } from "./seen.ts";

interface SeenChoiceProps {
  readonly part: string;
  /** As described; null where nobody looked yet, and only then it is asked. */
  readonly screw: "air" | "fuel" | null;
  readonly numbering: "bore" | "flow" | null;
  readonly seen: Seen;
  readonly onSeen: (seen: Seen) => void;
}

/** Asks what the carburetor is where nobody looked yet: the same look that reads the part tells it. */
export function SeenChoice({ part, screw, numbering, seen, onSeen }: SeenChoiceProps) {
  const words = useWords().newBike;
  if (part === "screw" && screw === null) {
    return (
      <Choice
        label={words.screw}
        down
        value={seen.screw ?? null}
        options={(["air", "fuel"] as const).map((value) => ({
          value,
          words: words.screws[value],
          hint: words.screwHints[value],
        }))}
        onChoose={(side) => onSeen({ ...seen, screw: side })}
      />
    );
  }
  if ((part === "main" || part === "pilot") && numbering === null) {
    return (
      <Choice
        label={words.numbering}
        down
        value={seen.jetNumbering ?? null}
        options={(["bore", "flow"] as const).map((value) => ({
          value,
          words: words.numberings[value],
          hint: words.numberingHints[value],
        }))}
        onChoose={(jetNumbering) => onSeen({ ...seen, jetNumbering })}
      />
    );
  }
  return null;
}
