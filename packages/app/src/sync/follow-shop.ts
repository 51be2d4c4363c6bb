import type { Shop } from "../store/shop.ts";
import { PAIRED } from "./paired.ts";

/** Begins to share the log where this device is paired with a shop. Nothing is loaded or asked for where it is not. */
export async function followShop(shop: Shop): Promise<void> {
  const paired = await shop.database.settings.get(PAIRED).catch(() => undefined);
  if (paired === undefined) return;
  const { beginSync } = await import("./runner.ts");
  beginSync(shop);
}
