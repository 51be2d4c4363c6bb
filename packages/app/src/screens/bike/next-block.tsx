import type { Step } from "@jetwright/core";
import { Link } from "wouter-preact";
import { useWords } from "../../words/use-words.ts";
import { surenessText } from "../step/sureness.ts";
import { bikeAddress } from "./bike-bar.tsx";

/** The one loud thing on the page: what to do next. */
export function NextBlock({ bike, step }: { readonly bike: string; readonly step: Step }) {
  const { bike: words, step: stepWords } = useWords();
  const sure = surenessText(step, stepWords);
  const stop = step.kind === "stop";
  const why = step.why.map(({ text }) => text).slice(0, 2);
  return (
    <section class={stop ? "loud stop" : "loud"} aria-label={words.next}>
      <span class="quiet small">{words.nextIn(step.minutes)}</span>
      <h2>{step.title}</h2>
      <p>{why.length > 0 ? `${why.join(". ")}.` : step.expect}</p>
      {sure !== null && <span class="quiet small">{sure}</span>}
      <Link class="button" href={bikeAddress(bike, "next")}>
        {words.showMe}
      </Link>
    </section>
  );
}
