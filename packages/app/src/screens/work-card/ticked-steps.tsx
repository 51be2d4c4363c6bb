interface TickedStepsProps {
  readonly steps: readonly string[];
  /** Indexes of those done. */
  readonly ticked: readonly number[];
  readonly onTick: (ticked: readonly number[]) => void;
}

/** Steps in order, each ticked off as it is done. */
export function TickedSteps({ steps, ticked, onTick }: TickedStepsProps) {
  return (
    <ol class="ticked">
      {steps.map((step, i) => (
        <li key={step}>
          <label>
            <input
              type="checkbox"
              checked={ticked.includes(i)}
              onChange={(event) =>
                onTick(event.currentTarget.checked ? [...ticked, i] : ticked.filter((each) => each !== i))
              }
            />
            <span>{step}</span>
          </label>
        </li>
      ))}
    </ol>
  );
}
