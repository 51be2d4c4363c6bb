import { type Database, DatabaseTrouble } from "../database/database.ts";
import type { Role, Scope } from "./scope.ts";
import { hashOf } from "./secrets.ts";

/** Who a request comes from. */
export interface Caller {
  readonly shop: string;
  readonly shopName: string;
  readonly person: string;
  readonly personName: string;
  readonly role: Role;
  readonly device: string;
  readonly scope: Scope;
}

/** A device of the shop, as its owner sees it. */
export interface Device {
  readonly id: string;
  readonly name: string;
  readonly person: string;
  readonly personName: string;
  readonly role: Role;
  readonly seenAt: number;
  readonly revoked: boolean;
}

/** When a device was last seen is written this seldom. */
const SEEN_EVERY = 3_600_000;

/** Who holds this token; null for one that is not known or was revoked. Asked for every request, so that revoking holds at once. */
export async function callerOf(database: Database, token: string, now: number): Promise<Caller | null> {
  const [row] = await database.all<{
    device: string;
    shop: string;
    shop_name: string;
    person: string;
    person_name: string;
    role: Role;
    seen_at: number;
  }>(
    `SELECT device.id AS device, device.shop, shop.name AS shop_name, device.person,
       person.name AS person_name, person.role, device.seen_at
     FROM device JOIN shop ON shop.id = device.shop
     JOIN person ON person.shop = device.shop AND person.id = device.person
     WHERE token_hash = ? AND revoked_at IS NULL`,
    [hashOf(token)],
  );
  if (row === undefined) return null;
  if (now - row.seen_at > SEEN_EVERY) {
    await noteSeen(database, row.device, now);
  }
  return {
    shop: row.shop,
    shopName: row.shop_name,
    person: row.person,
    personName: row.person_name,
    role: row.role,
    device: row.device,
    scope:
      row.role === "rider"
        ? { all: false, bikes: await bikesOf(database, row.shop, row.person) }
        : { all: true },
  };
}

/** On a full disk it is left out: who reads is answered all the same. */
async function noteSeen(database: Database, device: string, now: number): Promise<void> {
  try {
    await database.run("UPDATE device SET seen_at = ? WHERE id = ?", [now, device]);
  } catch (error) {
    if (!(error instanceof DatabaseTrouble)) throw error;
  }
}

async function bikesOf(database: Database, shop: string, person: string): Promise<readonly string[]> {
  const rows = await database.all<{ bike: string }>(
    "SELECT bike FROM person_bike WHERE shop = ? AND person = ? ORDER BY bike",
    [shop, person],
  );
  return rows.map(({ bike }) => bike);
}

export async function devicesOf(database: Database, shop: string): Promise<readonly Device[]> {
  const rows = await database.all<{
    id: string;
    name: string;
    person: string;
    person_name: string;
    role: Role;
    seen_at: number;
    revoked_at: number | null;
  }>(
    `SELECT device.id, device.name, device.person, person.name AS person_name, person.role,
       device.seen_at, device.revoked_at
     FROM device JOIN person ON person.shop = device.shop AND person.id = device.person
     WHERE device.shop = ? ORDER BY device.created_at, device.id`,
    [shop],
  );
  return rows.map(({ id, name, person, person_name, role, seen_at, revoked_at }) => ({
    id,
    name,
    person,
    personName: person_name,
    role,
    seenAt: seen_at,
    revoked: revoked_at !== null,
  }));
}

/** Shuts a device of the shop out, at once and for good; false when the shop has none of that id. */
export async function revoke(
  database: Database,
  shop: string,
  device: string,
  now: number,
): Promise<boolean> {
  const touched = await database.run(
    "UPDATE device SET revoked_at = coalesce(revoked_at, ?) WHERE shop = ? AND id = ?",
    [now, shop, device],
  );
  return touched === 1;
}
