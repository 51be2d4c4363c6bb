import { makeRecordId } from "@jetwright/records";
import type { CustomerListed } from "../../engine/answers/orders/customer-list.ts";
import type { Draft } from "../../store/shop.ts";

/** A customer as typed beside a bike. */
export interface CustomerTyped {
  readonly name: string;
  readonly reach: string;
}

const plain = (text: string): string => text.trim().toLowerCase();

/** The customers that go by the name typed; several may. */
export const namesakes = ({ name }: CustomerTyped, customers: readonly CustomerListed[]) =>
  name.trim() === "" ? [] : customers.filter((one) => plain(one.name) === plain(name));

/** The one customer meant: of namesakes the one reached the same way; null where none or several may be meant. */
export function customerMeant(
  typed: CustomerTyped,
  customers: readonly CustomerListed[],
): CustomerListed | null {
  const named = namesakes(typed, customers);
  const same = named.filter(({ reach }) => plain(reach) === plain(typed.reach));
  if (same.length > 0) return same[0]!;
  return typed.reach.trim() === "" && named.length === 1 ? named[0]! : null;
}

/** A name for a new customer that is nobody's yet. */
export const newCustomerId = (): string =>
  makeRecordId(Date.now(), crypto.getRandomValues(new Uint8Array(10)));

/** What makes the customer typed the bike's: described where new, and the bike said to be theirs. Nothing typed: nothing. */
export function customerDrafts(
  typed: CustomerTyped,
  customers: readonly CustomerListed[],
  bike: string,
  newId: () => string = newCustomerId,
): readonly Draft[] {
  const [name, reach] = [typed.name.trim(), typed.reach.trim()];
  if (name === "" && reach === "") return [];
  const known = customerMeant(typed, customers);
  const customer = known?.id ?? newId();
  const described = {
    kind: "customer-described",
    body: { customer, name, ...(reach !== "" && { reach }) },
  } as const;
  return [
    ...(known === null ? [described] : []),
    ...(known?.bikes.some(({ id }) => id === bike)
      ? []
      : [{ kind: "bike-described", bike, body: { customer } } as const]),
  ];
}
