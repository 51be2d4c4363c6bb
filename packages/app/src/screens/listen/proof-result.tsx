import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import type { Proved } from "./sound-messages.ts";

/** How the sound's speed stands against that of the sparks, as a whole and second by second. */
export function ProofResult({ proved }: { readonly proved: Proved }) {
  const allWords = useWords();
  const words = allWords.proof;
  const figure = useFigure();
  const { proof, doubts } = proved;
  const percent = (x: number): string => words.percent(figure(x, 2));
  const rows = [
    [words.rows.seconds, words.secondsOf(figure(proof.seconds, 1))],
    [words.rows.middle, percent(proof.middlePercent)],
    [words.rows.most, percent(proof.most95Percent)],
    [words.rows.gross, percent(proof.grossPercent)],
    [words.rows.unanswered, percent(proof.unansweredPercent)],
  ] as const;
  return (
    <>
      <h2>{words.result}</h2>
      <table class="table">
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {doubts.length > 0 && (
        <div class="caution stack">
          <p>{words.doubts}</p>
          {doubts.map((doubt) => (
            <p key={doubt}>{allWords.listen.doubts[doubt]}</p>
          ))}
        </div>
      )}
      <details>
        <summary>{words.bySecond}</summary>
        <table class="table">
          <thead>
            <tr>
              <th scope="col">{words.second}</th>
              <th scope="col" class="number">
                {words.true}
              </th>
              <th scope="col" class="number">
                {words.off}
              </th>
            </tr>
          </thead>
          <tbody>
            {proof.bySecond.map(({ second, rpm, errorPercent }) => (
              <tr key={second}>
                <th scope="row">{second}</th>
                <td class="number">{figure(rpm, 0)}</td>
                <td class="number">{errorPercent === null ? "–" : percent(errorPercent)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}
