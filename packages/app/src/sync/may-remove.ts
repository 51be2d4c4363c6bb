import type { Shop } from "../store/shop.ts";
import { PAIRED } from "./paired.ts";

/** Whether a person's data may be removed on this device: of a shop its owner says so, on a lone device whoever is at it. */
export async function mayRemove(shop: Shop): Promise<"yes" | "owner-only" | "no-network"> {
  if ((await shop.database.settings.get(PAIRED)) === undefined) return "yes";
  const { askJson } = await import("./remote.ts");
  try {
    const { role } = await askJson<{ readonly role: string }>("GET", "me");
    return role === "owner" ? "yes" : "owner-only";
  } catch {
    return "no-network";
  }
}
