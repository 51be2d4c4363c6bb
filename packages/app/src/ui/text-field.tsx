import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onInput: (typed: string) => void;
  readonly hint?: ComponentChildren;
  readonly wrong?: string | null;
  readonly lines?: number;
  readonly placeholder?: string;
  /** Id of a list of suggestions. */
  readonly list?: string;
}

/** Free text, one line or several. */
export function TextField({
  label,
  value,
  onInput,
  hint,
  wrong,
  lines = 1,
  placeholder,
  list,
}: TextFieldProps) {
  const id = useId();
  const common = {
    id,
    class: "bare",
    value,
    placeholder,
    "aria-invalid": wrong ? true : undefined,
    "aria-describedby": hint !== undefined || wrong ? `${id}-hint` : undefined,
  } as const;
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {lines > 1 ? (
        <textarea {...common} rows={lines} onInput={(event) => onInput(event.currentTarget.value)} />
      ) : (
        <input
          {...common}
          list={list}
          autocomplete="off"
          onInput={(event) => onInput(event.currentTarget.value)}
        />
      )}
      {(wrong || hint !== undefined) && (
        <span id={`${id}-hint`} class={wrong ? "wrong" : "hint"}>
          {wrong ?? hint}
        </span>
      )}
    </div>
  );
}
