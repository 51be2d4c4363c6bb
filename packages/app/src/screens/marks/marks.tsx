import { useFigure } from "../../preferences/use-figure.ts";
import { useAnswer } from "../../store/shop.ts";
import { Cautions } from "../../ui/cautions.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/cards.css";
import { LiftPicture } from "./lift-picture.tsx";

/** How to mark the grip by slide lift, with the lift at each mark for the bore of this carburetor. */
export function Marks({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const { cards: words, report } = useWords();
  const marks = useAnswer("throttleMarks", { bike });
  const names: Readonly<Record<string, string>> = report.at;
  const figure = useFigure();
  const mm = (value: number) => figure(value, 1);
  return (
    <Screen title={words.marksTitle} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: words.back }}>
      <p>{words.marksWhy}</p>
      {marks === null ? (
        <p class="quiet">{words.boreUnknown}</p>
      ) : (
        <>
          <p class={marks.assumed ? "warn" : undefined}>
            {(marks.assumed ? words.boreAssumed : words.bore)(mm(marks.heightMm))}
          </p>
          <LiftPicture marks={marks} label={words.marksPicture} names={names} />
          <table>
            <thead>
              <tr>
                <th scope="col">{words.opening}</th>
                <th scope="col" class="number">
                  {words.lift}
                </th>
              </tr>
            </thead>
            <tbody>
              {marks.marks.map(({ opening, liftMm }) => (
                <tr key={opening}>
                  <td>{names[opening] ?? opening}</td>
                  <td class="number">{words.mm(mm(liftMm))}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </>
      )}
      <Cautions ids={words.marksCautions} />
      <section class="work">
        <h2>{words.tools}</h2>
        <p>{words.marksTools}</p>
      </section>
      <section class="work">
        <h2>{words.steps}</h2>
        <ol class="steps">
          {words.marksSteps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
      </section>
    </Screen>
  );
}
