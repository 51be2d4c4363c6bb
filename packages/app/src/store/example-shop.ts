import type { Outcome } from "@jetwright/core";
import { SYNC_CURSOR } from "./database.ts";
import type { NotKept } from "./log-store.ts";
import type { Shop } from "./shop.ts";
import type { StoredRecord } from "./tables.ts";

interface ExampleRecord extends StoredRecord {
  readonly bike: string | null;
}

const read = (line: string): ExampleRecord => {
  const { id, bike = null } = JSON.parse(line) as { readonly id: string; readonly bike?: string };
  return { id, bike, line };
};

async function exampleRecords(): Promise<readonly ExampleRecord[]> {
  const { default: text } = await import("../../../../demo/shop.jsonl?raw");
  return text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map(read);
}

/** Brings the invented shop in, record by record as it was written. What is there already stays as it is. */
export async function takeExampleShop(shop: Shop): Promise<Outcome<readonly string[], NotKept>> {
  return shop.take((await exampleRecords()).map(({ id, line }) => ({ id, line })));
}

export type Leaving = "nothing-here" | "at-the-shop" | "all" | "in-part";

/**
 * What of the example shop can be taken off this device: every record that came with it, but for a bike that somebody
 * has written about since, which stays whole, and the drawer with it. Nothing once a shop's server may have it.
 */
async function leaving(shop: Shop): Promise<{ readonly what: Leaving; readonly ids: readonly string[] }> {
  const example = await exampleRecords();
  const known = new Set(example.map(({ id }) => id));
  const here = (await shop.store.all()).map(readAnything);
  const present = new Set(here.map(({ id }) => id).filter((id) => known.has(id)));
  if (present.size === 0) return { what: "nothing-here", ids: [] };
  if ((await shop.database.settings.get(SYNC_CURSOR)) !== undefined) return { what: "at-the-shop", ids: [] };
  const exampleBikes = new Set(example.map(({ bike }) => bike));
  const written = new Set(
    here
      .filter(({ id, bike }) => !known.has(id) && bike !== null && exampleBikes.has(bike))
      .map(({ bike }) => bike),
  );
  const ids = example
    .filter(({ id, bike }) => present.has(id) && (bike === null ? written.size === 0 : !written.has(bike)))
    .map(({ id }) => id);
  if (ids.length === 0) return { what: "nothing-here", ids };
  return { what: written.size === 0 ? "all" : "in-part", ids };
}

/** A line of any log: what is not a record of ours has no bike. */
function readAnything(line: string): Pick<ExampleRecord, "id" | "bike"> {
  try {
    return read(line);
  } catch {
    return { id: "", bike: null };
  }
}

/** Whether anything of the example shop is on this device that may be taken off it. */
export const exampleShopHere = async (shop: Shop): Promise<Leaving> => (await leaving(shop)).what;

/** Takes the example shop off this device again, and says how much of it. */
export async function leaveExampleShop(shop: Shop): Promise<Leaving> {
  const { what, ids } = await leaving(shop);
  if (ids.length > 0) await shop.takeOff(ids);
  return what;
}
