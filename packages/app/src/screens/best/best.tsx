import { useState } from "preact/hooks";
import type { AnswerOf } from "../../engine/protocol.ts";
import { percentRich } from "../../pictures/percent.ts";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { plainFigure } from "../../words/figures.ts";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { Slider } from "./slider.tsx";
import { useLiveAnswer } from "./use-live-answer.ts";
import "../../styles/best.css";

type Answer = Extract<NonNullable<AnswerOf<"best">>, { readonly ok: true }>["value"];
type Setup = Answer["list"][number];

const HEIGHT = { from: 0, to: 3500, step: 50 };
const CELSIUS = { from: -20, to: 45, step: 1 };
/** Of the list these stand open. */
const OPEN = 5;

const within = (x: number, { from, to, step }: typeof HEIGHT): number =>
  Math.min(to, Math.max(from, Math.round(x / step) * step));

/** The best setups for a place, while height and temperature are dragged. */
export function Best({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const whyNot = useRefusal();
  const { best: words, air } = useWords();
  const [preferences] = usePreferences();
  const [place, setPlace] = useState<{ readonly heightM: number; readonly celsius: number } | null>(null);
  const [from, setFrom] = useState<"drawer" | "sold">("drawer");
  const [order, setOrder] = useState<"runs" | "quick">("runs");
  const [throttle, setThrottle] = useState<"safe" | "any">("safe");
  const answer = useLiveAnswer("best", {
    bike,
    place,
    from,
    safe: throttle === "safe",
    countMinutes: order === "quick",
  });
  const there = answer?.ok ? answer.value : null;
  const shown = place ?? {
    heightM: within(there?.air.heightM ?? 0, HEIGHT),
    celsius: within(there?.air.celsius ?? 15, CELSIUS),
  };
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: air.bike }} wide>
      <div class="columns">
        <div class="column">
          <p>{words.lead}</p>
          <div class="sliders">
            <Slider
              label={words.height}
              {...HEIGHT}
              value={shown.heightM}
              text={heightText(shown.heightM, preferences)}
              onInput={(heightM) => setPlace({ ...shown, heightM })}
            />
            <Slider
              label={words.temperature}
              {...CELSIUS}
              value={shown.celsius}
              text={temperatureText(shown.celsius, preferences)}
              onInput={(celsius) => setPlace({ ...shown, celsius })}
            />
          </div>
          <Choice
            label={words.from}
            value={from}
            onChoose={setFrom}
            options={[
              { value: "drawer", words: air.drawer },
              { value: "sold", words: air.sold },
            ]}
          />
          <Choice
            label={words.throttle}
            value={throttle}
            onChoose={setThrottle}
            options={[
              { value: "safe", words: words.safe },
              { value: "any", words: words.any },
            ]}
          />
          <Choice
            label={words.order}
            value={order}
            onChoose={setOrder}
            options={[
              { value: "runs", words: words.runs },
              { value: "quick", words: words.quick },
            ]}
          />
        </div>
        <div class="column">
          {answer !== null && !answer.ok && (
            <p class="caution" role="alert">
              {whyNot(answer)}
            </p>
          )}
          {there !== null && <Listed answer={there} />}
        </div>
      </div>
    </Screen>
  );
}

function Listed({ answer }: { readonly answer: Answer }) {
  const { best: words } = useWords();
  const [preferences] = usePreferences();
  const { list, present, presentAt, size } = answer;
  const rest = list.slice(OPEN);
  return (
    <>
      <section class="best-fitted">
        <h2>{words.asFitted}</h2>
        <Mixture setup={present} />
        <p>
          {words.top[present.top]} {presentAt !== null && words.keptAs(presentAt + 1)}
        </p>
      </section>
      <h2>{words.list}</h2>
      {list.length === 0 && <p class="caution">{words.none}</p>}
      <ol class="best-list">
        {list.slice(0, OPEN).map((setup, i) => (
          <Row key={i} setup={setup} />
        ))}
      </ol>
      {rest.length > 0 && (
        <details>
          <summary>{words.show(rest.length)}</summary>
          <ol class="best-list" start={OPEN + 1}>
            {rest.map((setup, i) => (
              <Row key={i} setup={setup} />
            ))}
          </ol>
        </details>
      )}
      <p class="quiet small">{words.searched(plainFigure(size, preferences.language))}</p>
    </>
  );
}

function Row({ setup }: { readonly setup: Setup }) {
  const { best: words } = useWords();
  const [preferences] = usePreferences();
  const missing = setup.changes.filter(({ inDrawer }) => !inDrawer);
  return (
    <li>
      <h3>{setup.title === "" ? words.asFitted : setup.title}</h3>
      <Mixture setup={setup} />
      <p>
        {words.top[setup.top]}{" "}
        {setup.changes.length === 0
          ? words.nothingToDo
          : words.minutes(plainFigure(setup.minutes, preferences.language, 0))}{" "}
        {missing.length > 0 && (
          <strong>
            {words.toBuy} {missing.map(({ to }) => to).join(", ")}
          </strong>
        )}
      </p>
    </li>
  );
}

/** What the mixture is then, closed, at a quarter, half and full. */
function Mixture({ setup }: { readonly setup: Setup }) {
  const { best: words } = useWords();
  const told = [0, 2, 3, 5].map((i) => {
    const { opening, mean } = setup.mixture[i]!;
    const name = opening === 0 ? "closed" : opening === 1 ? "full" : opening === 0.25 ? "1/4" : "1/2";
    return words.mixture(name, Math.round(percentRich(mean)));
  });
  return <p class="best-mixture">{told.join(" · ")}</p>;
}
