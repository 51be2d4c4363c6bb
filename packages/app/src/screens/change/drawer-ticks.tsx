import { useWords } from "../../words/use-words.ts";

interface DrawerTicksProps {
  /** Null where the part that goes in does not lie in the drawer. */
  readonly took: boolean | null;
  /** Null where nobody knows what came off. */
  readonly kept: boolean | null;
  readonly onTook: (took: boolean) => void;
  readonly onKept: (kept: boolean) => void;
}

/** Whether the part came out of the drawer, and whether the one that came off goes into it. */
export function DrawerTicks({ took, kept, onTook, onKept }: DrawerTicksProps) {
  const words = useWords().change;
  const ticks = [
    [took, onTook, words.fromDrawer],
    [kept, onKept, words.intoDrawer],
  ] as const;
  return (
    <ul class="ticked">
      {ticks.map(
        ([ticked, onTick, what]) =>
          ticked !== null && (
            <li key={what}>
              <label>
                <input
                  type="checkbox"
                  checked={ticked}
                  onChange={(event) => onTick(event.currentTarget.checked)}
                />
                <span>{what}</span>
              </label>
            </li>
          ),
      )}
    </ul>
  );
}
