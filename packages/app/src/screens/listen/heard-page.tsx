import { DIGITS } from "../../engine/answers/listen/figure-digits.ts";
import { dayText } from "../../preferences/day.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { ABOVE_PERCENT, HeardLine } from "./heard-line.tsx";

interface HeardPageProps {
  readonly params: { readonly bike: string; readonly record: string };
}

/** What was heard in a take that is on record: the picture behind a step that rests on it. */
export function HeardPage({ params }: HeardPageProps) {
  const { bike, record } = params;
  const words = useWords().listen;
  const figure = useFigure();
  const [preferences] = usePreferences();
  const answer = useAnswer("takeHeard", { bike, record });
  const back = { to: bikeAddress(bike, "listen"), words: words.title };
  if (answer === null || !answer.ok) {
    return (
      <Screen title={words.noTake} back={back}>
        {answer !== null && <p>{answer.detail}</p>}
      </Screen>
    );
  }
  const { figures, at } = answer.value;
  return (
    <Screen title={words.noTake} aside={dayText(at, preferences)} back={back}>
      <HeardLine take={answer.value} />
      {(figures.hangSeconds ?? 0) >= 0.4 && (
        <p>{words.hangWords(figure(figures.hangSeconds!, 1), figure(ABOVE_PERCENT, 0))}</p>
      )}
      <table class="table">
        <tbody>
          {(Object.keys(DIGITS) as (keyof typeof DIGITS)[]).map((name) => {
            const value = figures[name];
            return (
              value !== undefined && (
                <tr key={name}>
                  <th scope="row">{words.figures[name].words}</th>
                  <td class="number">{words.figures[name].unit(figure(value, DIGITS[name]))}</td>
                </tr>
              )
            );
          })}
        </tbody>
      </table>
      {(figures.hangSeconds ?? 0) >= 0.6 && <p>{words.hung}</p>}
      {figures.stalls === 1 && <p>{words.stalled}</p>}
      {(figures.undershootPercent ?? 0) >= 8 && <p>{words.dived}</p>}
      <p class="small quiet">{words.made}</p>
    </Screen>
  );
}
