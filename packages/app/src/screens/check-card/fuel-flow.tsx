import { useAnswer } from "../../store/shop.ts";
import { NumberField, typedNumber } from "../../ui/number-field.tsx";
import { useWords } from "../../words/use-words.ts";

interface FuelFlowProps {
  /** What the can held after each minute, as typed. */
  readonly can: readonly string[];
  readonly onCan: (can: readonly string[]) => void;
  /** The sentence of the check that says how much is enough. */
  readonly enough: string | null;
}

/** The flow from the tank, from what the can held after each minute, beside what is enough. */
export function FuelFlow({ can, onCan, enough }: FuelFlowProps) {
  const words = useWords().cards;
  const flow = useAnswer("fuelFlow", { can: can.map(typedNumber) });
  return (
    <section class="stack">
      <div class="flow-figures">
        {can.map((typed, i) => (
          <div key={words.canAfter[i]} class="stack">
            <NumberField
              label={words.canAfter[i]!}
              unit={words.ml}
              value={typed}
              wrong={typed.trim() !== "" && typedNumber(typed) === null ? words.notANumber : null}
              onInput={(next) => onCan(can.map((each, j) => (j === i ? next : each)))}
            />
            {flow?.perMinute[i] != null && (
              <output>
                <span class="small quiet">{words.flow[i]}</span>
                <span class="number">{words.mlPerMinute(Math.round(flow.perMinute[i]))}</span>
              </output>
            )}
          </div>
        ))}
      </div>
      {flow?.fell && <p class="warn">{words.flowFell}</p>}
      {enough !== null && <p class="small quiet">{enough}</p>}
    </section>
  );
}
