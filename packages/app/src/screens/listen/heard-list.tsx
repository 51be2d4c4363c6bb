import { DIGITS } from "../../engine/answers/listen/figure-digits.ts";
import type { SoundOfBike } from "../../engine/answers/listen/sound-engine.ts";
import { dayText } from "../../preferences/day.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useWords } from "../../words/use-words.ts";
import type { Take } from "./sound-messages.ts";

interface HeardListProps {
  readonly take: Take;
  readonly sound: SoundOfBike;
}

/** The figures of a take, try by try, beside those it is held against; or why there are none. */
export function HeardList({ take, sound }: HeardListProps) {
  const words = useWords().listen;
  const figure = useFigure();
  const [preferences] = usePreferences();
  const { heard, measured, figures } = take;
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
  const { against, differs } = sound;
  const shown = (name: keyof typeof DIGITS, value: number): string =>
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
            {against !== null && (
              <th scope="col" class="number">
                {against.good ? words.good : words.before}
              </th>
            )}
          </tr>
        </thead>
        <tbody>
          {measured.map(({ name, tries, middle }) => (
            <tr key={name}>
              <th scope="row">
                {words.figures[name].words}
                {tries.length > 1 && (
                  <span class="small quiet tries-of">
                    {tries.map((value) => figure(value, DIGITS[name])).join(" · ")}
                  </span>
                )}
              </th>
              <td class="number">{shown(name, middle)}</td>
              {against !== null && (
                <td class="number">
                  {against.figures[name] === undefined ? "–" : shown(name, against.figures[name])}
                </td>
              )}
            </tr>
          ))}
        </tbody>
      </table>
      {against !== null && (
        <>
          <h3>
            {against.good
              ? words.againstGood(dayText(against.at, preferences))
              : words.againstLast(dayText(against.at, preferences))}
          </h3>
          {differs.length === 0 ? (
            <p>{words.noDifference}</p>
          ) : (
            <ul>
              {differs.map(({ name, way, by }) => (
                <li key={name}>{words.differs[name][way](shown(name, by))}</li>
              ))}
            </ul>
          )}
        </>
      )}
      {(figures.hangSeconds ?? 0) >= 0.6 && <p>{words.hung}</p>}
      {figures.stalls === 1 && <p>{words.stalled}</p>}
      {(figures.undershootPercent ?? 0) >= 8 && <p>{words.dived}</p>}
      <p class="small quiet">
        {words.sure(figure(Math.min(9, Math.round(10 * (figures.confidence ?? 0))), 0))}
      </p>
    </section>
  );
}
