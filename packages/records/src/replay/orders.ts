import type { UsedEntry, UsedEntryOf } from "../entry.ts";
import type { Problem } from "../problem.ts";

/** A work order: what was written about its bike while it was open. */
export interface Order {
  /** Id of the record that opened it. */
  readonly id: string;
  readonly bike: string;
  readonly opened: UsedEntryOf<"order-opened">;
  /** Null while it is open. */
  readonly closed: UsedEntryOf<"order-closed"> | null;
  /** In the order of the story, without what opened and closed it. */
  readonly entries: readonly UsedEntry[];
}

interface OpenOrder {
  readonly opened: UsedEntryOf<"order-opened">;
  readonly closed: UsedEntryOf<"order-closed"> | null;
  readonly entries: UsedEntry[];
}

/**
 * The orders of a story, oldest first. Of several open on one bike what is written belongs to the one opened last, so
 * that nothing is counted twice. A closing counts whatever its own time, as clocks differ; of two the earlier counts.
 */
export function ordersOf(story: readonly UsedEntry[]): {
  readonly orders: readonly Order[];
  readonly problems: readonly Problem[];
} {
  const closings = new Map<string, UsedEntryOf<"order-closed">>();
  const left: [UsedEntry, string, string][] = [];
  for (const entry of story) {
    if (entry.kind !== "order-closed") continue;
    const { order } = entry.body;
    if (!closings.has(order)) closings.set(order, entry);
    else left.push([entry, `closes the order "${order}", which is closed already`, "Strike one of the two."]);
  }
  const orders: OpenOrder[] = [];
  const open = new Map<string, OpenOrder[]>();
  const done = new Set<string>();
  for (const entry of story) {
    if (entry.bike === null) continue;
    const here = open.get(entry.bike) ?? [];
    if (entry.kind === "order-opened") {
      const closed = closings.get(entry.id) ?? null;
      const order = { opened: entry, closed, entries: [] };
      orders.push(order);
      if (closed === null || !done.has(closed.id)) open.set(entry.bike, [...here, order]);
      closings.delete(entry.id);
    } else if (entry.kind === "order-closed") {
      done.add(entry.id);
      open.set(
        entry.bike,
        here.filter(({ closed }) => closed?.id !== entry.id),
      );
    } else here.at(-1)?.entries.push(entry);
  }
  for (const [order, entry] of closings) {
    const mend =
      "It will count when that record arrives; if the id is misspelt, strike this and write it again.";
    left.push([entry, `closes the order "${order}", which is not in this log`, mend]);
  }
  return {
    orders: orders.map(({ opened, closed, entries }) => ({
      id: opened.id,
      bike: opened.bike!,
      opened,
      closed,
      entries,
    })),
    problems: left.map(([{ id, line }, what, mend]) => ({
      line,
      record: id,
      path: "body.order",
      what,
      mend,
    })),
  };
}
