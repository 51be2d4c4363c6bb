import { useEffect, useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import { mayRemove, type ShopPerson } from "../../sync/may-remove.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { type Removing, withDevices, withListed } from "./with-devices.ts";

const addressOf = ({ is, who }: Removing): string => `/remove/${is}/${encodeURIComponent(who)}`;

interface RemoveProps {
  readonly params: { readonly is?: string; readonly who?: string };
}

/** Everybody whose data is in the log, and for one of them what goes and what stays. */
export function Remove({ params }: RemoveProps) {
  const words = useWords().orders.remove;
  const shop = useShop();
  const inLog = useAnswer("removable", null);
  const [atShop, setAtShop] = useState<readonly ShopPerson[]>([]);
  // Without a network the list is of the log alone; the removing asks again.
  useEffect(() => {
    if (navigator.onLine) void mayRemove(shop).then((said) => said.may === "yes" && setAtShop(said.people));
  }, [shop]);
  const people = inLog === null ? null : withDevices(inLog, atShop);
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
              {person.records > 0 && <span class="quiet small aside">{words.records(person.records)}</span>}
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}

function RemoveOne({ person }: { readonly person: Removing }) {
  const words = useWords().orders.remove;
  const shop = useShop();
  const [, go] = useLocation();
  const [sure, setSure] = useState(false);
  const [busy, setBusy] = useState(false);

  async function remove() {
    setBusy(true);
    const said = await mayRemove(shop);
    if (said.may === "yes") {
      const { bodies } = person.is === "device" ? person : withListed(person, said.people);
      const kept = await shop.erase(...bodies);
      say(kept.ok ? words.done : kept.detail);
      if (kept.ok) go("/remove", { replace: true });
    } else say(words.not[said.may]);
    setBusy(false);
  }

  return (
    <Screen title={words.of(person.name)} back={{ to: "/remove", words: words.title }}>
      <h2>{words.goes}</h2>
      <ul class="stack">
        {person.is !== "device" &&
          (person.is === "customer" ? words.goesCustomer : words.goesWriter).map((what) => (
            <li key={what}>{what}</li>
          ))}
        {person.listed && <li>{words.goesDevice}</li>}
        {person.bikes.length > 0 && <li>{words.goesBikes(person.bikes.join(", "))}</li>}
        {person.records > 0 && <li>{words.inRecords(person.records)}</li>}
      </ul>
      <h2>{words.stays}</h2>
      <ul class="stack">
        {words.staysList.map((what) => (
          <li key={what}>{what}</li>
        ))}
        {person.listed && <li>{words.staysDevice}</li>}
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
