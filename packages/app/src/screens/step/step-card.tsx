import type { Step } from "@jetwright/core";
import type { ComponentChildren } from "preact";
import { Link } from "wouter-preact";
import type { Standing } from "../../engine/answers/standing.ts";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { surenessText } from "./sureness.ts";

interface StepCardProps {
  readonly bike: string;
  readonly step: Step;
  readonly standing: Standing;
  /** Where it is carried out; null where it has no screen. */
  readonly to: string | null;
  readonly onFollow: () => void;
  /** What comes after the step. */
  readonly children: ComponentChildren;
}

/** A step in full: what, why, what to expect, what would prove it wrong, how to undo it, and its cautions. */
export function StepCard({ bike, step, standing, to, onFollow, children }: StepCardProps) {
  const words = useWords().step;
  const [preferences] = usePreferences();
  const names = useWords().fitted.part;
  const stop = step.kind === "stop";
  const sure = surenessText(step, words);
  // A ride says with its notes how far the throttle may go.
  const saidInNotes = step.kind === "ride" && step.topThrottle !== "free" && step.notes.length > 0;
  const heard = step.why.find(({ record }) => standing.heard.includes(record))?.record;
  const toBuy = step.changes.filter(({ inDrawer }) => !inDrawer);
  return (
    <div class="columns">
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
        {step.why.length === 0 ? (
          !stop && step.id !== "confirm" && <p>{words.whyNone}</p>
        ) : (
          <ul aria-label={words.why}>
            {step.why.map(({ record, text }) => {
              const at = standing.dates[record];
              return (
                <li key={`${record} ${text}`}>
                  {at === undefined ? text : words.reason(text, dayText(at, preferences))}
                </li>
              );
            })}
          </ul>
        )}
        {heard !== undefined && (
          <Link class="button plain" href={bikeAddress(bike, `heard/${encodeURIComponent(heard)}`)}>
            {words.heard}
          </Link>
        )}
        <p>{stop ? `${words.expect}: ${step.expect}` : step.expect}</p>
        <p>
          {words.undo}: {step.undo}
        </p>
        {sure !== null && <p class="quiet small">{sure}</p>}
        <Cautions ids={step.cautions.slice(0, stop ? undefined : 2)} />
        {to !== null && (
          <Link class="button" href={to} onClick={onFollow}>
            {words.go[step.kind]}
          </Link>
        )}
      </section>
      <div class="card">
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
            <Looks bike={bike} looks={standing.looks.filter(({ first }) => first)} onFollow={onFollow} />
            <details>
              <summary>{words.otherLooks}</summary>
              <Looks bike={bike} looks={standing.looks.filter(({ first }) => !first)} onFollow={onFollow} />
            </details>
          </section>
        )}
        <section>
          <h3>{words.wrongIf}</h3>
          <p>{step.wrongIf}</p>
        </section>
        {!stop && (
          <section>
            <h3>{words.topLabel}</h3>
            {!saidInNotes && (
              <p class={step.topThrottle === "free" ? undefined : "warn"}>{words.top[step.topThrottle]}</p>
            )}
            {step.notes.map((note) => (
              <p key={note} class={saidInNotes ? "warn" : undefined}>
                {note}
              </p>
            ))}
          </section>
        )}
        {stop && step.notes.map((note) => <p key={note}>{note}</p>)}
        {step.tools.length > 0 && (
          <section>
            <h3>{words.tools}</h3>
            <p>{step.tools.join(", ")}</p>
          </section>
        )}
        {!stop && <Cautions ids={step.cautions.slice(2)} />}
        {children}
      </div>
    </div>
  );
}

interface LooksProps {
  readonly bike: string;
  readonly looks: Standing["looks"];
  readonly onFollow: () => void;
}

/** Checks whose result answers a stop. */
function Looks({ bike, looks, onFollow }: LooksProps) {
  return (
    <ul class="rows">
      {looks.map(({ id, words }) => (
        <li key={id}>
          <Link class="row" href={bikeAddress(bike, `check/${id}`)} onClick={onFollow}>
            <span>{words}</span>
            <span aria-hidden="true">→</span>
          </Link>
        </li>
      ))}
    </ul>
  );
}
