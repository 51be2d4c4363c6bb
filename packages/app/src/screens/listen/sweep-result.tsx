import type { SweepPeak } from "@jetwright/core";
import type { ScrewSweep } from "../../engine/answers/listen/screw-sweep.ts";
import { useFigure, useTurns } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";

interface SweepResultProps {
  readonly sweep: ScrewSweep;
  /** Turns out before the sweep and now. */
  readonly start: number;
  readonly at: number;
  readonly busy: boolean;
  /** Called with where the screw is left. */
  readonly onKeep: (turns: number) => void;
}

/** What the marks tell so far, and the keys to keep it. */
export function SweepResult({ sweep, start, at, busy, onKeep }: SweepResultProps) {
  const words = useWords().sweep;
  const figure = useFigure();
  const turnsOf = useTurns();
  const { reading, why, result } = sweep;
  return (
    <>
      {why !== null && <p>{words.why[why]}</p>}
      {reading?.kind === "flat" && (
        <p>{words.flat(figure(reading.changeRpm, 0), turnsOf(reading.spanTurns))}</p>
      )}
      {reading?.kind === "at-end" && result === null && <p>{words.atEnd[reading.end]}</p>}
      {reading?.kind === "peak" && <Peak peak={reading} />}
      {result !== null && (
        <>
          <p class="strong">{result.words}</p>
          <button type="button" class="button main" disabled={busy} onClick={() => onKeep(at)}>
            {at === start ? words.keep : words.keepAt(turnsOf(at))}
          </button>
          {at !== start && (
            <button type="button" class="button" disabled={busy} onClick={() => onKeep(start)}>
              {words.keepBack(turnsOf(start))}
            </button>
          )}
        </>
      )}
    </>
  );
}

function Peak({ peak }: { readonly peak: SweepPeak }) {
  const words = useWords().sweep;
  const figure = useFigure();
  const { turns, turnsSd, rpm, inner, outer } = peak;
  const one = inner ?? outer;
  return (
    <>
      <p>{words.best(figure(turns, 1), figure(turnsSd, 1), figure(Math.round(rpm / 10) * 10, 0))}</p>
      <p>
        {inner !== null && outer !== null
          ? words.band(figure(inner, 1), figure(outer, 1), figure(outer - inner, 1))
          : one === null
            ? words.noEdge
            : words.oneEdge(figure(one, 1))}
      </p>
    </>
  );
}
