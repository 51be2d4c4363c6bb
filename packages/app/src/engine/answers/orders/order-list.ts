import type { Order, ShopState } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface OrderListed {
  readonly id: string;
  readonly bike: string;
  readonly bikeName: string;
  /** Null where nobody said whose bike it is, or the name is gone. */
  readonly customer: string | null;
  readonly complaint: string;
  readonly openedAt: number;
  /** Null while it is open. */
  readonly closedAt: number | null;
}

/** Every work order: the open ones first, each the newest first. */
export function orderList({ shop }: EngineState, _given: null): readonly OrderListed[] {
  return shop.orders
    .map((order) => orderListed(order, shop))
    .sort(
      (a, b) =>
        Number(a.closedAt !== null) - Number(b.closedAt !== null) ||
        b.openedAt - a.openedAt ||
        (a.id < b.id ? 1 : -1),
    );
}

/** Whose order it is: as it says, else the bike's customer. */
export const customerOf = ({ bike, opened }: Order, shop: ShopState): string | null =>
  opened.body.customer ?? shop.bikes.get(bike)?.description?.customer ?? null;

export function orderListed(order: Order, shop: ShopState): OrderListed {
  const { id, bike, opened, closed } = order;
  const customer = customerOf(order, shop);
  return {
    id,
    bike,
    bikeName: shop.bikes.get(bike)?.description?.name ?? bike,
    customer: (customer !== null && shop.customers.get(customer)?.name) || null,
    complaint: opened.body.complaint?.trim() ?? "",
    openedAt: opened.at,
    closedAt: closed?.at ?? null,
  };
}
