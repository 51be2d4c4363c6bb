import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

interface NumberFieldProps {
  readonly label: string;
  /** As typed; kept as text so that half a number stays half a number. */
  readonly value: string;
  readonly onInput: (typed: string) => void;
  readonly unit?: ComponentChildren;
  readonly hint?: ComponentChildren;
  readonly wrong?: string | null;
  readonly placeholder?: string;
}

/** A number as typed, decimal comma or point, with its unit beside it. */
export function NumberField({ label, value, onInput, unit, hint, wrong, placeholder }: NumberFieldProps) {
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <div class="entry">
        <input
          id={id}
          inputMode="decimal"
          autocomplete="off"
          value={value}
          placeholder={placeholder}
          aria-invalid={wrong ? true : undefined}
          aria-describedby={hint !== undefined || wrong ? `${id}-hint` : undefined}
          onInput={(event) => onInput(event.currentTarget.value)}
        />
        {unit !== undefined && <span class="unit">{unit}</span>}
      </div>
      {(wrong || hint !== undefined) && (
        <span id={`${id}-hint`} class={wrong ? "wrong" : "hint"}>
          {wrong ?? hint}
        </span>
      )}
    </div>
  );
}

/** The number typed, or null when nothing or no number stands there. Comma and point both mark the decimals. */
export function typedNumber(typed: string): number | null {
  const text = typed.trim().replace(",", ".").replace("−", "-");
  return /^-?\d*\.?\d+$|^-?\d+\.$/.test(text) ? Number(text) : null;
}
