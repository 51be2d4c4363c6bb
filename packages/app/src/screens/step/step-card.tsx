import type { Step } from "@jetwright/core";
import { Link } from "wouter-preact";
import type { Standing } from "../../engine/answers/standing.ts";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";

interface StepCardProps {
  readonly bike: string;
  readonly step: Step;
  readonly standing: Standing;
  /** Where it is carried out; null where it has no screen. */
  readonly to: string | null;
  readonly onFollow: () => void;
}

/** A step in full: what, why, what to expect, what would prove it wrong, how to undo it, and its cautions. */
export function StepCard({ bike, step, standing, to, onFollow }: StepCardProps) {
  const words = useWords().step;
  const [preferences] = usePreferences();
  const names = useWords().fitted.part;
  const stop = step.kind === "stop";
  const toBuy = step.changes.filter(({ inDrawer }) => !inDrawer);
  return (
    <div class="card">
      <section class={stop ? "loud stop" : "loud"}>
        <span class="quiet small">
          {words.kind[step.kind]} · {words.minutes(step.minutes)}
        </span>
        <h2>{step.title}</h2>
        {toBuy.map(({ part, to: size }) => (
          <p key={part}>
            {names[part]} {size}: {words.toBuy}
          </p>
        ))}
        {!stop && <p class="quiet small">{words.sure(step.sure.words)}</p>}
        {to !== null && (
          <Link class="button" href={to} onClick={onFollow}>
            {words.go[step.kind]}
          </Link>
        )}
      </section>
      <Cautions ids={step.cautions.slice(0, stop ? undefined : 2)} />
      <section>
        <h3>{words.why}</h3>
        {step.why.length === 0 ? (
          <p>{words.whyNone}</p>
        ) : (
          <ul>
            {step.why.map(({ record, text }) => {
              const at = standing.dates[record];
              return (
                <li key={`${record} ${text}`}>
                  {at === undefined ? text : words.reason(dayText(at, preferences), text)}
                </li>
              );
            })}
          </ul>
        )}
      </section>
      {step.how.length > 0 && (
        <section>
          <h3>{words.how}</h3>
          <ol class="steps how">
            {step.how.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ol>
        </section>
      )}
      {stop && standing.looks.length > 0 && (
        <section>
          <h3>{words.whatChecked}</h3>
          <ul class="rows">
            {standing.looks.map(({ id, words: what }) => (
              <li key={id}>
                <Link class="row" href={bikeAddress(bike, `check/${id}`)} onClick={onFollow}>
                  <span>{what}</span>
                  <span aria-hidden="true">→</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h3>{words.expect}</h3>
        <p>{step.expect}</p>
      </section>
      <section>
        <h3>{words.wrongIf}</h3>
        <p>{step.wrongIf}</p>
      </section>
      <section>
        <h3>{words.undo}</h3>
        <p>{step.undo}</p>
      </section>
      {!stop && (
        <section>
          <h3>{words.topLabel}</h3>
          <p class={step.topThrottle === "free" ? undefined : "warn"}>{words.top[step.topThrottle]}</p>
        </section>
      )}
      {step.notes.length > 0 && (
        <ul class="stack">
          {step.notes.map((note) => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
      {step.tools.length > 0 && (
        <section>
          <h3>{words.tools}</h3>
          <p>{step.tools.join(", ")}</p>
        </section>
      )}
      {!stop && <Cautions ids={step.cautions.slice(2)} />}
    </div>
  );
}
