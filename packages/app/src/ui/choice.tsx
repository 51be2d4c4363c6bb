import type { ComponentChildren } from "preact";
import { useId } from "preact/hooks";

export interface Option<Value extends string> {
  readonly value: Value;
  readonly words: ComponentChildren;
  readonly hint?: ComponentChildren;
}

interface ChoiceProps<Value extends string> {
  readonly label: string;
  readonly options: readonly Option<Value>[];
  readonly value: Value | null;
  readonly onChoose: (value: Value) => void;
  /** One below the other, with a hint under each. */
  readonly down?: boolean;
  readonly hideLabel?: boolean;
}

/** One of several, a tap each. */
export function Choice<Value extends string>({
  label,
  options,
  value,
  onChoose,
  down,
  hideLabel,
}: ChoiceProps<Value>) {
  const name = useId();
  return (
    <fieldset class="field">
      <legend class={hideLabel ? "unseen" : undefined}>{label}</legend>
      <div class={down ? "choices down" : "choices"}>
        {options.map((option) => (
          <label key={option.value} class="choice">
            <input
              type="radio"
              name={name}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>
              {option.words}
              {option.hint !== undefined && (
                <span class="small" style="display:block;font-weight:400">
                  {option.hint}
                </span>
              )}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
