import { useEffect, useRef } from "preact/hooks";
import type { CallersBike, StartingView } from "../../engine/answers/starting.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { SendText } from "../../ui/send-text.tsx";
import type { Words } from "../../words/en.ts";
import { plainFigure } from "../../words/figures.ts";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";

type StartWords = Words["start"];
type StartingFigure = StartingView["figures"][number];

/** The starting setup: what to fit first, how far it may be off, what it rests on, and a text to send. */
export function StartingResult({ asked }: { readonly asked: CallersBike }) {
  const whyNot = useRefusal();
  const words = useWords().start;
  const [{ language }] = usePreferences();
  const said = (x: number): string => plainFigure(x, language, 2);
  const point = useAnswer("starting", asked);
  const heading = useRef<HTMLHeadingElement>(null);
  const ready = point !== null;
  useEffect(() => {
    if (ready) heading.current?.scrollIntoView({ block: "start" });
  }, [ready]);
  if (point === null) return <p class="quiet">…</p>;
  if (!point.ok)
    return (
      <p class="warn" role="alert">
        {whyNot(point)}
      </p>
    );
  const { figures, needle, warnings, leftOut, cautions, shopSetups, text } = point.value;
  return (
    <section class="stack">
      <h2 ref={heading}>{words.result}</h2>
      <div class="loud">
        {figures.map((figure) => (
          <div key={`${figure.part}${figure.numbering}`}>
            <h3>
              {nameOf(figure, words)}: {startOf(figure, words, said)}
            </h3>
            <p class="quiet small">{words.spread(said(figure.low), said(figure.high))}</p>
          </div>
        ))}
      </div>
      <p>
        <b>{words.needle}:</b> {needle}
      </p>
      <Lines title={words.know} lines={warnings} />
      <h3>{words.firstRide}</h3>
      <ul class="stack">
        {cautions.map((caution) => (
          <li key={caution} class="caution">
            {caution}
          </li>
        ))}
      </ul>
      <details>
        <summary>{words.rests}</summary>
        <p class="quiet">{words.shop(shopSetups)}</p>
        <ul class="stack">
          {figures.map((figure) => (
            <li key={`${figure.part}${figure.numbering}`}>
              {words.restsOn(nameOf(figure, words), figure.restsOn.join("; "))}
            </li>
          ))}
        </ul>
      </details>
      <Lines title={words.notUsed} lines={leftOut} />
      <SendText label={words.text} title={words.title} text={text} />
    </section>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul class="stack">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

const nameOf = ({ part, numbering }: StartingFigure, words: StartWords): string =>
  numbering === null ? words.parts[part] : words.numbered(words.parts[part], numbering);

function startOf({ part, start }: StartingFigure, words: StartWords, said: (x: number) => string): string {
  if (part === "clip") return words.clip(start);
  if (part === "screw") return words.turns(start);
  return part === "cutaway" ? words.cutaway(start) : said(start);
}
