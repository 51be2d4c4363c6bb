import type { Heard } from "@jetwright/core";
import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import { figuresOf } from "./figures-of.ts";

interface HeardListProps {
  readonly heard: Heard;
  readonly before: Readonly<Record<string, number>> | null;
}

const DIGITS = {
  idleRpm: 0,
  hangSeconds: 2,
  undershootPercent: 0,
  settleSeconds: 1,
  riseSeconds: 2,
  bogPercent: 0,
  huntingPercent: 0,
  closings: 0,
} as const;

/** The figures of a take beside those of the last one, or why there are none. */
export function HeardList({ heard, before }: HeardListProps) {
  const words = useWords().listen;
  const figure = useFigure();
  if (heard.doubts.length > 0) {
    return (
      <section class="stack caution" role="alert">
        <h2>{words.notUsed}</h2>
        {heard.doubts.map(({ reason }) => (
          <p key={reason}>{words.doubts[reason]}</p>
        ))}
      </section>
    );
  }
  const now = figuresOf(heard);
  const shown = (name: keyof typeof words.figures, value: number): string =>
    words.figures[name].unit(figure(value, DIGITS[name]));
  return (
    <section class="stack">
      <h2>{words.heard}</h2>
      <table class="table">
        <thead>
          <tr>
            <th scope="col">{words.what}</th>
            <th scope="col" class="number">
              {words.now}
            </th>
            {before && (
              <th scope="col" class="number">
                {words.before}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {(Object.keys(words.figures) as (keyof typeof words.figures)[])
            .filter((name) => now[name] !== undefined)
            .map((name) => (
              <tr key={name}>
                <th scope="row">{words.figures[name].words}</th>
                <td class="number">{shown(name, now[name]!)}</td>
                {before && (
                  <td class="number">{before[name] === undefined ? "–" : shown(name, before[name])}</td>
                )}
              </tr>
            ))}
        </tbody>
      </table>
      {(now.hangSeconds ?? 0) >= 0.4 && <p>{words.hung}</p>}
      {now.stalls === 1 && <p>{words.stalled}</p>}
      {(now.undershootPercent ?? 0) >= 8 && <p>{words.dived}</p>}
      {heard.doubled && <p>{words.doubled}</p>}
      <p class="small quiet">{words.sure(figure(Math.round(10 * (now.confidence ?? 0)), 0))}</p>
    </section>
  );
}
