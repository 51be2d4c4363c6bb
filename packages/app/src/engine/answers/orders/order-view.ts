import { accept, type Outcome, refuse } from "@jetwright/core";
import type { UsedEntry } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { drawerPart } from "../story/drawer-words.ts";
import { sentenceOf } from "../story/sentence.ts";
import { setupWords } from "../story/setup-words.ts";
import { type Saying, storyWords } from "../story/story-words.ts";
import { customerOf, type OrderListed, orderListed } from "./order-list.ts";

export interface OrderLine {
  readonly id: string;
  readonly at: number;
  readonly words: string;
}

export interface OrderView extends OrderListed {
  /** How the customer can be reached. */
  readonly reach: string | null;
  readonly handedOver: string;
  /** What riders reported, and notes. */
  readonly told: readonly OrderLine[];
  readonly tested: readonly OrderLine[];
  /** Checks that found all well. */
  readonly ruledOut: readonly OrderLine[];
  /** Faults found and mended. */
  readonly found: readonly OrderLine[];
  /** Parts fitted or set, and what else changed on the bike. */
  readonly changed: readonly OrderLine[];
  readonly work: readonly (OrderLine & { readonly minutes: number | null })[];
  readonly minutes: number;
  /** Out of the drawer and noted by hand, each kind once. */
  readonly parts: readonly { readonly name: string; readonly count: number }[];
  /** What is fitted now. */
  readonly fitted: string;
}

type Section = "told" | "tested" | "ruledOut" | "found" | "changed";

/** Where a record stands on the order; null for what a customer need not read there. */
function sectionOf(entry: UsedEntry): Section | null {
  switch (entry.kind) {
    case "ride-reported":
    case "note":
      return "told";
    case "test-done":
    case "mixture-measured":
    case "sound-heard":
      return "tested";
    case "check-done":
      return entry.body.found === "sound" ? "ruledOut" : "found";
    case "setup-fitted":
    case "engine-changed":
    case "known-good-marked":
    case "fuel-used":
      return "changed";
    default:
      return null;
  }
}

/** A work order with all that was done under it. */
export function orderView(
  { shop, entries, words: core }: EngineState,
  { order: id, language }: { readonly order: string; readonly language: string },
): Outcome<OrderView, "no-such-order"> {
  const order = shop.orders.find((one) => one.id === id);
  if (order === undefined) {
    return refuse("no-such-order", "No such work order is on this device; it may stand on another phone.");
  }
  const words = storyWords(language, core);
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const lines = (section: Section): OrderLine[] =>
    order.entries
      .filter((entry) => sectionOf(entry) === section)
      .map((entry) => ({
        id: entry.id,
        at: entry.at,
        words: sentenceOf(entry, words, (other) => byId.get(other)),
      }));
  const work = order.entries
    .filter((entry) => entry.kind === "work-noted")
    .map((entry) => ({
      id: entry.id,
      at: entry.at,
      words: entry.body.words?.trim() ?? "",
      minutes: entry.body.minutes ?? null,
    }));
  const customer = customerOf(order, shop);
  return accept({
    ...orderListed(order, shop),
    reach: (customer !== null && shop.customers.get(customer)?.reach?.trim()) || null,
    handedOver: order.closed?.body.handedOver?.trim() ?? "",
    told: lines("told"),
    tested: lines("tested"),
    ruledOut: lines("ruledOut"),
    found: lines("found"),
    changed: lines("changed"),
    work: work.filter(({ words: what, minutes }) => what !== "" || minutes !== null),
    minutes: work.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
    parts: partsOf(order.entries, words),
    fitted: setupWords(shop.bikes.get(order.bike)?.now.setup.parts ?? {}, words),
  });
}

function partsOf(entries: readonly UsedEntry[], words: Saying): OrderView["parts"] {
  const counts = new Map<string, number>();
  const add = (name: string, count: number) => counts.set(name, (counts.get(name) ?? 0) + count);
  for (const entry of entries) {
    if (entry.kind === "setup-fitted") {
      for (const part of entry.body.drawer?.took ?? []) add(drawerPart(part, words), part.count);
    } else if (entry.kind === "parts-used") {
      for (const part of entry.body.parts) add(drawerPart(part, words), part.count);
    } else if (entry.kind === "work-noted") {
      for (const { name, count } of entry.body.parts ?? []) add(name.trim(), count);
    }
  }
  return [...counts].map(([name, count]) => ({ name, count }));
}
