import type { Shop } from "../store/shop.ts";
import { PAIRED } from "./paired.ts";

/** Somebody with a device of the shop, as its server lists them. */
export interface ShopPerson {
  readonly id: string;
  /** Empty once it was removed. */
  readonly name: string;
}

/** Whether a person's data may be removed on this device, and who of the shop has a device. */
export type MayRemove =
  | { readonly may: "yes"; readonly people: readonly ShopPerson[] }
  | { readonly may: "owner-only" | "no-network" };

/** Of a shop its owner removes a person's data, on a lone device whoever is at it. */
export async function mayRemove(shop: Shop): Promise<MayRemove> {
  if ((await shop.database.settings.get(PAIRED)) === undefined) return { may: "yes", people: [] };
  const { askJson } = await import("./remote.ts");
  try {
    const { role } = await askJson<{ readonly role: string }>("GET", "me");
    if (role !== "owner") return { may: "owner-only" };
    return { may: "yes", ...(await askJson<{ readonly people: readonly ShopPerson[] }>("GET", "people")) };
  } catch {
    return { may: "no-network" };
  }
}
