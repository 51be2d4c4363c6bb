import { useEffect, useState } from "preact/hooks";
import { canShareText, copyToClipboard, shareText } from "../carry/hand-over.ts";
import { useWords } from "../words/use-words.ts";
import { TextField } from "./text-field.tsx";
import { say } from "./toast.tsx";

interface SendTextProps {
  readonly label: string;
  /** Of the message, where the other app wants one. */
  readonly title: string;
  readonly text: string;
}

/** A block of text that can be changed before it goes out, with the ways to send it: copy, and share where the device can. */
export function SendText({ label, title, text }: SendTextProps) {
  const words = useWords().ask;
  const [shown, setShown] = useState(text);
  useEffect(() => setShown(text), [text]);
  const copy = async () => say((await copyToClipboard(shown)) ? words.copied : words.notCopied);
  return (
    <div class="stack">
      <button type="button" class="button main" onClick={() => void copy()}>
        {words.copy}
      </button>
      {canShareText() && (
        <button type="button" class="button" onClick={() => void shareText(title, shown)}>
          {words.share}
        </button>
      )}
      <TextField label={label} value={shown} onInput={setShown} lines={14} />
    </div>
  );
}
