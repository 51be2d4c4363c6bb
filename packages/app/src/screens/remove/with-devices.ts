import type { Removable } from "../../engine/answers/remove/removable.ts";
import type { ShopPerson } from "../../sync/may-remove.ts";

/** Somebody whose data can be removed: of the log, of the shop's list of people, or of both. */
export interface Removing extends Omit<Removable, "is"> {
  readonly is: Removable["is"] | "device";
  /** The shop's list of people has the name too. */
  readonly listed: boolean;
}

const plain = (name: string): string => name.trim().toLowerCase();

/** With the same person's names at the shop's server, which go with the first of the records that remove the data. */
export function withListed<One extends Pick<Removable, "name" | "bodies">>(
  one: One,
  people: readonly ShopPerson[],
): One & { readonly listed: boolean } {
  const same = people.filter(({ name }) => name !== "" && plain(name) === plain(one.name));
  if (same.length === 0) return { ...one, listed: false };
  const [first, ...more] = one.bodies;
  return { ...one, listed: true, bodies: [{ ...first, people: same.map(({ id }) => id) }, ...more] };
}

/** Whoever the log names, and behind them those that the shop's list of people alone names. */
export function withDevices(
  removable: readonly Removable[],
  people: readonly ShopPerson[],
): readonly Removing[] {
  const inLog = new Set(removable.map(({ name }) => plain(name)));
  const others = people.filter(({ name }) => name !== "" && !inLog.has(plain(name)));
  return [
    ...removable.map((one) => withListed(one, people)),
    ...others.map(
      ({ id, name }): Removing => ({
        ...{ is: "device", who: id, name, bikes: [], records: 0, listed: true },
        bodies: [{ people: [id] }],
      }),
    ),
  ];
}
