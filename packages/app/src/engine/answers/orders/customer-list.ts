import type { EngineState } from "../../state.ts";
import { customerOf } from "./order-list.ts";

export interface CustomerListed {
  readonly id: string;
  readonly name: string;
  readonly reach: string;
  readonly notes: string;
  readonly bikes: readonly { readonly id: string; readonly name: string }[];
  readonly openOrders: number;
}

/** Every customer with the bikes that are theirs, by name; those without a name at the end. */
export function customerList({ shop }: EngineState, _given: null): readonly CustomerListed[] {
  const bikes = [...shop.bikes.values()];
  return [...shop.customers.values()]
    .map(({ customer, name, reach, notes }) => {
      const own = bikes.filter(({ description }) => description?.customer === customer);
      return {
        id: customer,
        name: name?.trim() ?? "",
        reach: reach?.trim() ?? "",
        notes: notes?.trim() ?? "",
        bikes: own.map(({ id, description }) => ({ id, name: description?.name ?? id })),
        openOrders: shop.orders.filter(
          (order) => order.closed === null && customerOf(order, shop) === customer,
        ).length,
      };
    })
    .sort(
      (a, b) =>
        Number(a.name === "") - Number(b.name === "") ||
        a.name.localeCompare(b.name) ||
        (a.id < b.id ? -1 : 1),
    );
}
