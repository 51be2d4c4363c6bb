import type { Advice, Step } from "@jetwright/core";
import { Link } from "wouter-preact";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";

interface OtherWaysProps {
  readonly bike: string;
  /** All ways, the best one first. */
  readonly ways: readonly Step[];
  /** The one that is shown in full. */
  readonly shown: number;
  /** Changes that would help and wait, the best one first. */
  readonly waiting: Advice["waiting"];
}

/** What else could be done, each with its minutes; a tap shows it in full. Then what waits, with what it waits for. */
export function OtherWays({ bike, ways, shown, waiting }: OtherWaysProps) {
  const words = useWords().step;
  return (
    <section>
      <h3>{words.others}</h3>
      {ways.length === 1 && <p class="quiet">{words.othersNone}</p>}
      <ul class="rows">
        {ways.map(({ title, kind, minutes, changes }, index) =>
          index === shown ? null : (
            <li key={`${kind} ${title}`}>
              <Link class="row" href={bikeAddress(bike, index === 0 ? "next" : `next/${index}`)}>
                <span>
                  {title}
                  <span class="kind">
                    {" "}
                    {index === 0 ? words.back : words.kind[kind]}
                    {changes.some(({ inDrawer }) => !inDrawer) && `, ${words.toBuy}`}
                  </span>
                </span>
                <span class="number">{words.minutes(minutes)}</span>
              </Link>
            </li>
          ),
        )}
      </ul>
      {waiting.length > 0 && (
        <>
          <h4>{words.waiting}</h4>
          <ul class="rows">
            {waiting.map(({ id, title, why, frees, minutes }) => (
              <li key={id} class="row">
                <span>
                  {title}
                  <span class="kind">
                    {" "}
                    {why} {frees}
                  </span>
                </span>
                <span class="number">{words.minutes(minutes)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
