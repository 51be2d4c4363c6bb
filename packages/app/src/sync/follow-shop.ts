import type { ComponentType } from "preact";
import type { Shop } from "../store/shop.ts";
import { watched } from "../store/value.ts";

/** The setting that says which shop this device is paired with. */
export const PAIRED = "sync-paired";

/** Draws where the device stands with its shop; null for a device of no shop, and until the code is there. */
export const syncLine = watched<ComponentType | null>(null);

/** Begins to share the log where this device is paired with a shop. Nothing is loaded or asked for where it is not. */
export async function followShop(shop: Shop): Promise<void> {
  const paired = await shop.database.settings.get(PAIRED).catch(() => undefined);
  if (paired === undefined) return;
  const { beginSync } = await import("./runner.ts");
  beginSync(shop);
}
