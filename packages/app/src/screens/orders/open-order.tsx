import { useState } from "preact/hooks";
import { Link, Redirect, useLocation } from "wouter-preact";
import type { CustomerListed } from "../../engine/answers/orders/customer-list.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { CustomerField } from "./customer-field.tsx";
import { customerDrafts } from "./customer-typed.ts";
import { orderAddress } from "./order-address.ts";

/** The open work order of a bike, or a new one: whose bike it is, and the complaint in the customer's words. */
export function OpenOrder({ params: { bike } }: { readonly params: { readonly bike: string } }) {
  const words = useWords().orders;
  const orders = useAnswer("orders", null);
  const customers = useAnswer("customers", null);
  const view = useAnswer("bike", { bike });
  const open = orders?.find((one) => one.bike === bike && one.closedAt === null);
  if (open !== undefined) return <Redirect to={orderAddress(open.id)} replace />;
  const back = { to: bikeAddress(bike), words: view?.name ?? bike };
  return (
    <Screen title={words.newOrder} back={back}>
      {orders !== null && customers !== null && <OrderForm bike={bike} customers={customers} />}
    </Screen>
  );
}

function OrderForm({
  bike,
  customers,
}: {
  readonly bike: string;
  readonly customers: readonly CustomerListed[];
}) {
  const words = useWords().orders;
  const shop = useShop();
  const [, go] = useLocation();
  const own = customers.find(({ bikes }) => bikes.some(({ id }) => id === bike));
  const [complaint, setComplaint] = useState("");
  const [typed, setTyped] = useState({ name: own?.name ?? "", reach: own?.reach ?? "" });

  async function open() {
    const kept = await shop.keep(...customerDrafts(typed, customers, bike), {
      kind: "order-opened",
      bike,
      body: { complaint: complaint.trim() },
    });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    go(orderAddress(kept.value.at(-1)!), { replace: true });
    say(words.opened);
  }

  return (
    <>
      <TextField
        label={words.complaint}
        hint={words.complaintHint}
        lines={4}
        value={complaint}
        onInput={(text) => setComplaint(text.slice(0, 20_000))}
      />
      <CustomerField typed={typed} customers={customers} onType={setTyped} />
      <button type="button" class="button main" onClick={() => void open()}>
        {words.openIt}
      </button>
      <p class="quiet small">{words.belongs}</p>
      <Link class="button plain" href="/orders">
        {words.title}
      </Link>
    </>
  );
}
