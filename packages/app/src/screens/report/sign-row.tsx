import type { SignOffered } from "../../engine/answers/ride-form.ts";
import { useWords } from "../../words/use-words.ts";
import { SignDrawing } from "./drawing.tsx";

interface SignRowProps {
  readonly sign: SignOffered;
  /** True: it did this. False: looked for and not there. Undefined: nothing said. */
  readonly marked: boolean | undefined;
  readonly onMark: (seen: boolean) => void;
}

/** One sign told as sound, smoke and feel: a tap when it did that, a tap at the side when it was looked for and not there. */
export function SignRow({ sign, marked, onMark }: SignRowProps) {
  const words = useWords().report;
  const state = marked === undefined ? "" : marked ? " seen" : " missed";
  return (
    <li class={`sign${state}`}>
      <button
        type="button"
        class="it"
        aria-pressed={marked === true}
        // The second half of a double tap belongs to the row that has gone.
        onClick={(event) => event.detail < 2 && onMark(true)}
      >
        <SignDrawing sign={sign.id} />
        <span>
          <strong>{sign.words}</strong>
          <span class="small quiet">{words.hints[sign.id] ?? sign.description}</span>
        </span>
      </button>
      <button
        type="button"
        class="not"
        aria-pressed={marked === false}
        aria-label={words.notThereOf(sign.words)}
        onClick={(event) => event.detail < 2 && onMark(false)}
      >
        {words.notThere}
      </button>
    </li>
  );
}
