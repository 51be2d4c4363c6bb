import { useWords } from "../../words/use-words.ts";
import { TickedSteps } from "../work-card/ticked-steps.tsx";

interface TicksProps {
  readonly ids: readonly string[];
  readonly ticked: readonly string[];
  readonly onTick: (ticked: readonly string[]) => void;
}

/** Ticks by their ids; those of other pages stay. */
export function Ticks({ ids, ticked, onTick }: TicksProps) {
  const { tick } = useWords().change;
  return (
    <TickedSteps
      steps={ids.map((id) => tick[id] ?? id)}
      ticked={ids.flatMap((id, i) => (ticked.includes(id) ? [i] : []))}
      onTick={(now) => onTick([...ticked.filter((id) => !ids.includes(id)), ...now.map((i) => ids[i]!)])}
    />
  );
}
