import { useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import type { CustomerListed } from "../../engine/answers/orders/customer-list.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { newCustomerId } from "./customer-typed.ts";

const NEW: CustomerListed = { id: "", name: "", reach: "", notes: "", bikes: [], openOrders: 0 };

/** One customer: name, how to reach them, and which bikes are theirs. */
export function Customer({ params }: { readonly params: { readonly customer: string } }) {
  const words = useWords().orders;
  const customers = useAnswer("customers", null);
  const customer = params.customer === "new" ? NEW : customers?.find(({ id }) => id === params.customer);
  const back = { to: "/customers", words: words.customers };
  if (customer === undefined) {
    return (
      <Screen title={words.customers} back={back}>
        {customers !== null && <p>{words.noSuchCustomer}</p>}
      </Screen>
    );
  }
  return (
    <Screen
      title={customer.name === "" ? (customer === NEW ? words.addCustomer : words.noName) : customer.name}
      back={back}
    >
      <CustomerForm key={customer.id} customer={customer} />
      {customer !== NEW && (
        <>
          <OwnBikes customer={customer} />
          <Link class="button plain" href={`/remove/customer/${encodeURIComponent(customer.id)}`}>
            {words.remove.link}
          </Link>
        </>
      )}
    </Screen>
  );
}

function CustomerForm({ customer }: { readonly customer: CustomerListed }) {
  const words = useWords().orders;
  const shop = useShop();
  const [, go] = useLocation();
  const [typed, setTyped] = useState({ name: customer.name, reach: customer.reach, notes: customer.notes });
  const set = (change: Partial<typeof typed>) => setTyped((now) => ({ ...now, ...change }));

  async function keep() {
    if (typed.name.trim() === "") {
      say(words.nameNeeded);
      return;
    }
    const body = { ...typed, customer: customer === NEW ? newCustomerId() : customer.id };
    const kept = await shop.keep({ kind: "customer-described", body });
    if (!kept.ok) say(kept.detail);
    else {
      if (customer === NEW) go(`/customer/${body.customer}`, { replace: true });
      say(words.kept);
    }
  }

  return (
    <section class="stack">
      <TextField
        label={words.name}
        value={typed.name}
        onInput={(name) => set({ name: name.slice(0, 200) })}
      />
      <TextField
        label={words.reach}
        hint={words.reachHint}
        value={typed.reach}
        onInput={(reach) => set({ reach: reach.slice(0, 200) })}
      />
      <TextField
        label={words.notes}
        lines={2}
        value={typed.notes}
        onInput={(notes) => set({ notes: notes.slice(0, 20_000) })}
      />
      <button type="button" class="button main" onClick={() => void keep()}>
        {words.keep}
      </button>
    </section>
  );
}

function OwnBikes({ customer }: { readonly customer: CustomerListed }) {
  const words = useWords().orders;
  const shop = useShop();
  const bikes = useAnswer("bikes", null) ?? [];
  const own = new Set(customer.bikes.map(({ id }) => id));
  const others = bikes.filter(({ id }) => !own.has(id));

  async function belongs(bike: string, to: string | null) {
    const kept = await shop.keep({ kind: "bike-described", bike, body: { customer: to } });
    say(kept.ok ? words.kept : kept.detail);
  }

  return (
    <section class="stack">
      <h2>{words.theirBikes}</h2>
      <ul class="rows">
        {customer.bikes.map(({ id, name }) => (
          <li key={id} class="row">
            <Link class="row" href={bikeAddress(id)}>
              {name}
            </Link>
            <button
              type="button"
              class="button plain short"
              aria-label={words.notTheirs(name)}
              onClick={() => void belongs(id, null)}
            >
              {words.notTheirsShort}
            </button>
          </li>
        ))}
      </ul>
      {others.length > 0 && (
        <Choice
          label={words.addBike}
          down
          value={null}
          options={others.map(({ id, name, customer: whose }) => ({
            value: id,
            words: name,
            ...(whose === null ? {} : { hint: whose }),
          }))}
          onChoose={(bike) => void belongs(bike, customer.id)}
        />
      )}
    </section>
  );
}
