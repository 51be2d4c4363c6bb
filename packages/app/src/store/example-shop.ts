import type { Outcome } from "@jetwright/core";
import type { StoredRecord } from "./database.ts";
import type { NotKept } from "./log-store.ts";
import type { Shop } from "./shop.ts";

/** Brings the invented shop in, record by record as it was written. What is there already stays as it is. */
export async function takeExampleShop(shop: Shop): Promise<Outcome<readonly string[], NotKept>> {
  const { default: text } = await import("../../../../demo/shop.jsonl?raw");
  const records = text
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line): StoredRecord => ({ id: (JSON.parse(line) as StoredRecord).id, line }));
  return shop.take(records);
}
