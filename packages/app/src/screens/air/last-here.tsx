import type { BodyOf } from "@jetwright/records";
import { useState } from "preact/hooks";
import { Link } from "wouter-preact";
import type { RanHere } from "../../engine/answers/air/last-here.ts";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { dayText } from "../../words/dates.ts";
import { useWords } from "../../words/use-words.ts";
import "../../styles/air.css";
import { bikeAddress } from "../bike/bike-bar.tsx";

interface LastHereProps {
  readonly bike: string;
  /** The air asked about; null: the air last noted. */
  readonly body: BodyOf<"air-measured"> | null;
  /** Its name; empty where it has none. */
  readonly place: string;
}

/** What ran right before in air like this, on this bike and the others of the shop. */
export function LastHere({ bike, body, place }: LastHereProps) {
  const words = useWords().air.here;
  const [preferences] = usePreferences();
  const [at] = useState(() => Date.now());
  const here = useAnswer("lastHere", { bike, body, at, language: preferences.language });
  if (here === null || (!here.ok && body !== null)) return null;
  return (
    <section class="stack">
      <h2>{place === "" ? words.title : words.titleAt(place)}</h2>
      {here.ok ? (
        <>
          <p class="quiet small">
            {words.near(
              temperatureText(Math.round(here.value.celsius), preferences),
              heightText(here.value.heightM, preferences),
            )}
          </p>
          {here.value.ran.length === 0 && <p>{words.none}</p>}
          <ul class="rows">
            {here.value.ran.map((ran) => (
              <Ran key={ran.record} ran={ran} />
            ))}
          </ul>
        </>
      ) : (
        <p>{words.noAir}</p>
      )}
    </section>
  );
}

function Ran({ ran }: { readonly ran: RanHere }) {
  const words = useWords().air.here;
  const [preferences] = usePreferences();
  const air = [
    dayText(ran.at, preferences.language),
    ran.place,
    temperatureText(Math.round(ran.celsius), preferences),
    heightText(ran.heightM, preferences),
    ran.fuel,
  ];
  return (
    <li class="stack ran">
      <h3>{ran.own ? words.own : ran.bikeName}</h3>
      <p>{ran.setup}</p>
      <p class="quiet small">{air.filter(Boolean).join(" · ")}</p>
      {ran.words !== null && <p class="quiet small">“{ran.words}”</p>}
      <p class="small">{words.now(ran.denserPercent, ran.richerPercent)}</p>
    </li>
  );
}

/** The same by itself, for the air last noted. */
export function LastHereScreen({ params: { bike } }: { readonly params: { readonly bike: string } }) {
  const words = useWords().air;
  return (
    <Screen title={words.here.question} back={{ to: bikeAddress(bike), words: words.bike }}>
      <LastHere bike={bike} body={null} place="" />
      <Link class="button" href={bikeAddress(bike, "air")}>
        {words.title}
      </Link>
    </Screen>
  );
}
