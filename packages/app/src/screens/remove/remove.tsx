import { useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import type { Removable } from "../../engine/answers/remove/removable.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { mayRemove } from "../../sync/may-remove.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";

const addressOf = ({ is, who }: Removable): string => `/remove/${is}/${encodeURIComponent(who)}`;

interface RemoveProps {
  readonly params: { readonly is?: string; readonly who?: string };
}

/** Everybody whose data is in the log, and for one of them what goes and what stays. */
export function Remove({ params }: RemoveProps) {
  const words = useWords().orders.remove;
  const people = useAnswer("removable", null);
  const chosen = people?.find(({ is, who }) => is === params.is && who === params.who);
  if (chosen !== undefined) return <RemoveOne person={chosen} />;
  return (
    <Screen title={words.title} back={{ to: "/more", words: words.more }}>
      <p>{words.intro}</p>
      {people?.length === 0 && <p>{words.nobody}</p>}
      <ul class="rows">
        {people?.map((person) => (
          <li key={addressOf(person)}>
            <Link class="row" href={addressOf(person)}>
              <span>
                <h3>{person.name === "" ? words.noName : person.name}</h3>
                <span class="quiet small">{words.is[person.is]}</span>
              </span>
              <span class="quiet small aside">{words.records(person.records)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}

function RemoveOne({ person }: { readonly person: Removable }) {
  const words = useWords().orders.remove;
  const shop = useShop();
  const [, go] = useLocation();
  const [sure, setSure] = useState(false);
  const [busy, setBusy] = useState(false);

  async function remove() {
    setBusy(true);
    const may = await mayRemove(shop);
    if (may === "yes") {
      const kept = await shop.erase(...person.bodies);
      say(kept.ok ? words.done : kept.detail);
      if (kept.ok) go("/remove", { replace: true });
    } else say(words.not[may]);
    setBusy(false);
  }

  return (
    <Screen title={words.of(person.name)} back={{ to: "/remove", words: words.title }}>
      <h2>{words.goes}</h2>
      <ul class="stack">
        {(person.is === "customer" ? words.goesCustomer : words.goesWriter).map((what) => (
          <li key={what}>{what}</li>
        ))}
        {person.bikes.length > 0 && <li>{words.goesBikes(person.bikes.join(", "))}</li>}
        <li>{words.inRecords(person.records)}</li>
      </ul>
      <h2>{words.stays}</h2>
      <ul class="stack">
        {words.staysList.map((what) => (
          <li key={what}>{what}</li>
        ))}
      </ul>
      <p class="caution">{words.noUndo}</p>
      <label class="choice">
        <input type="checkbox" checked={sure} onChange={(event) => setSure(event.currentTarget.checked)} />
        <span>{words.sure}</span>
      </label>
      <button type="button" class="button main" disabled={!sure || busy} onClick={() => void remove()}>
        {words.remove}
      </button>
    </Screen>
  );
}
