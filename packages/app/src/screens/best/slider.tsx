import { useId } from "preact/hooks";

interface SliderProps {
  readonly label: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** The value with its unit. */
  readonly text: string;
  readonly onInput: (value: number) => void;
}

/** A figure that is dragged, or moved with the arrow keys. */
export function Slider({ label, value, from, to, step, text, onInput }: SliderProps) {
  const id = useId();
  return (
    <div class="slider">
      <label htmlFor={id}>{label}</label>
      <output htmlFor={id} class="number">
        {text}
      </output>
      <input
        id={id}
        type="range"
        min={from}
        max={to}
        step={step}
        value={value}
        aria-valuetext={text}
        onInput={(event) => onInput(event.currentTarget.valueAsNumber)}
      />
    </div>
  );
}
