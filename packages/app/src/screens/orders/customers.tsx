import { Link } from "wouter-preact";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";

export const customerAddress = (customer: string): string => `/customer/${encodeURIComponent(customer)}`;

/** Customers by name, each with the bikes that are theirs. */
export function Customers() {
  const words = useWords().orders;
  const customers = useAnswer("customers", null);
  return (
    <Screen
      title={words.customers}
      back={{ to: "/orders", words: words.title }}
      bar={<Link href={customerAddress("new")}>{words.addCustomer}</Link>}
    >
      {customers?.length === 0 && <p>{words.noCustomers}</p>}
      <ul class="rows">
        {customers?.map(({ id, name, bikes, openOrders }) => (
          <li key={id}>
            <Link class="row" href={customerAddress(id)}>
              <span>
                <h3>{name === "" ? words.noName : name}</h3>
                <span class="quiet small">{bikes.map((bike) => bike.name).join(", ")}</span>
              </span>
              {openOrders > 0 && <span class="small aside">{words.openCount(openOrders)}</span>}
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
