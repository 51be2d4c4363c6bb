import { Link } from "wouter-preact";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { orderAddress } from "./order-address.ts";

/** Every work order, the open ones first, and the bikes one can be opened for. */
export function OrderList() {
  const words = useWords().orders;
  const [preferences] = usePreferences();
  const orders = useAnswer("orders", null);
  const bikes = useAnswer("bikes", null);
  const without = bikes?.filter(({ ordered, away }) => !ordered && !away) ?? [];
  const groups = [
    [words.open, orders?.filter(({ closedAt }) => closedAt === null) ?? []],
    [words.closed, orders?.filter(({ closedAt }) => closedAt !== null) ?? []],
  ] as const;
  return (
    <Screen
      title={words.title}
      back={{ to: "/", words: words.bikes }}
      bar={<Link href="/customers">{words.customers}</Link>}
    >
      {orders?.length === 0 && <p>{words.none}</p>}
      {groups.map(
        ([heading, listed]) =>
          listed.length > 0 && (
            <section key={heading}>
              <h2>{heading}</h2>
              <ul class="rows">
                {listed.map(({ id, bikeName, customer, complaint, openedAt }) => (
                  <li key={id}>
                    <Link class="row" href={orderAddress(id)}>
                      <span>
                        <h3>{bikeName}</h3>
                        <span class="quiet small">{[customer, complaint].filter(Boolean).join(": ")}</span>
                      </span>
                      <span class="quiet small day">{dayText(openedAt, preferences)}</span>
                    </Link>
                  </li>
                ))}
              </ul>
            </section>
          ),
      )}
      {without.length > 0 && (
        <section>
          <h2>{words.openFor}</h2>
          <ul class="rows">
            {without.map(({ id, name, customer }) => (
              <li key={id}>
                <Link class="row" href={bikeAddress(id, "order")}>
                  <span>{name}</span>
                  <span class="quiet small aside">{customer}</span>
                </Link>
              </li>
            ))}
          </ul>
        </section>
      )}
    </Screen>
  );
}
