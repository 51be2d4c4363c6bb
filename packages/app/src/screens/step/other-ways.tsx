import type { Step } from "@jetwright/core";
import { Link } from "wouter-preact";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";

interface OtherWaysProps {
  readonly bike: string;
  /** All ways, the best one first. */
  readonly ways: readonly Step[];
  /** The one that is shown in full. */
  readonly shown: number;
}

/** What else could be done, each with its minutes; a tap shows it in full. */
export function OtherWays({ bike, ways, shown }: OtherWaysProps) {
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
    </section>
  );
}
