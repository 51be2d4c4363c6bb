import { useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { leaveExampleShop, takeExampleShop } from "../store/example-shop.ts";
import { useAnswer, useShop } from "../store/shop.ts";
import { CopyReminder } from "../ui/copy-reminder.tsx";
import { LanguageChoice } from "../ui/language-choice.tsx";
import { Screen } from "../ui/screen.tsx";
import { SyncLine } from "../ui/sync-line.tsx";
import { say } from "../ui/toast.tsx";
import { useWords } from "../words/use-words.ts";
import { bikeAddress } from "./bike/bike-bar.tsx";
import { HomeBar } from "./home-bar.tsx";

/** Every bike, the last touched first; on the first visit the two ways to begin. */
export function Bikes() {
  const words = useWords().home;
  const { startedEmpty } = useShop();
  const bikes = useAnswer("bikes", null) ?? (startedEmpty ? [] : null);
  return (
    <Screen title={words.title} bar={<HomeBar />}>
      {bikes?.length === 0 && <FirstVisit />}
      <ul class="rows">
        {bikes?.map(({ id, name, strokes, displacementCc, away, state, customer }) => (
          <li key={id}>
            <Link class="row" href={bikeAddress(id)}>
              <span>
                <h3>{name}</h3>
                <span class="quiet small">
                  {[strokes && words.strokes(strokes), displacementCc && words.cc(displacementCc), customer]
                    .filter(Boolean)
                    .join(" · ")}
                </span>
              </span>
              <span class={state === "stopped" && !away ? "warn small aside" : "quiet small aside"}>
                {away ? words.away : words.state[state]}
              </span>
            </Link>
          </li>
        ))}
      </ul>
      <SyncLine />
      <CopyReminder />
      {bikes !== null && bikes.length > 0 && (
        <>
          <Link class="button" href="/orders">
            {words.orders(bikes.filter(({ ordered }) => ordered).length)}
          </Link>
          <Link class="button" href="/new">
            {words.another}
          </Link>
        </>
      )}
    </Screen>
  );
}

function FirstVisit() {
  const words = useWords().home;
  const shop = useShop();
  const [coming, setComing] = useState(false);

  async function bring() {
    setComing(true);
    try {
      const taken = await takeExampleShop(shop);
      if (taken.ok)
        say(words.exampleIn, { words: words.exampleUndo, act: () => void leaveExampleShop(shop) });
      else say(taken.detail);
    } catch {
      say(words.exampleNotHere);
    }
    setComing(false);
  }

  return (
    <div class="stack">
      <p>{words.first}</p>
      <p>{words.firstNext}</p>
      <Link class="button main" href="/new">
        {words.setUp}
      </Link>
      <button type="button" class="button" disabled={coming} onClick={() => void bring()}>
        {coming ? words.exampleComes : words.example}
      </button>
      <LanguageChoice />
    </div>
  );
}
