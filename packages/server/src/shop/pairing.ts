import { accept, type Outcome, refuse } from "@jetwright/core";
import { type Database, only, type Sql } from "../database/database.ts";
import type { Role } from "./scope.ts";
import { hashOf, newToken, randomText } from "./secrets.ts";

/** A code for a new device holds this long. */
export const CODE_MINUTES = 10;
const SETUP_DAYS = 7;

/** What a new device gets; the token is told once and kept nowhere. */
export interface Paired {
  readonly shop: string;
  readonly person: string;
  readonly device: string;
  readonly token: string;
}

/** Codes are typed by hand: 8 letters of 5 bits, in groups of four. What is typed may have them otherwise. */
const plainCode = (typed: string): string => typed.toLowerCase().replaceAll(/[^a-z0-9]/g, "");
const shownCode = (plain: string): string => (plain.match(/.{1,4}/g) ?? []).join("-");

async function newCode(
  sql: Sql,
  shop: string | null,
  person: string | null,
  expiresAt: number,
): Promise<string> {
  // The owner's first code opens a shop and lives for days, so it is twice as long.
  const plain = randomText(shop === null ? 16 : 8);
  await sql.run("INSERT INTO pairing (code_hash, shop, person, expires_at) VALUES (?, ?, ?, ?)", [
    hashOf(plain),
    shop,
    person,
    expiresAt,
  ]);
  return shownCode(plain);
}

/** A code that opens a new shop and makes its owner. An older one that was not used ends. */
export async function setupCode(database: Database, now: number): Promise<string> {
  return database.transaction(async (sql) => {
    await sql.run("DELETE FROM pairing WHERE shop IS NULL");
    return newCode(sql, null, null, now + SETUP_DAYS * 86_400_000);
  });
}

export async function shopCount(database: Database): Promise<number> {
  return only(await database.all<{ n: number }>("SELECT count(*) AS n FROM shop")).n;
}

/** Takes a code out, so that it is used once whoever else tries at the same time. */
async function takeCode(
  sql: Sql,
  typed: string,
  now: number,
): Promise<{ shop: string | null; person: string | null } | null> {
  const hash = hashOf(plainCode(typed));
  const found = await sql.all<{ shop: string | null; person: string | null; expires_at: number }>(
    "SELECT shop, person, expires_at FROM pairing WHERE code_hash = ?",
    [hash],
  );
  const taken = await sql.run("DELETE FROM pairing WHERE code_hash = ?", [hash]);
  const [code] = found;
  return code === undefined || taken !== 1 || code.expires_at <= now ? null : code;
}

const badCode = () =>
  refuse(
    "bad-code",
    "That code is not known, was used, or is too old. Ask for a new one and type it within ten minutes.",
  );

/** Opens a shop with the code of the first start; the device that does is the owner's. */
export async function openShop(
  database: Database,
  wanted: { readonly code: string; readonly shop: string; readonly person: string; readonly device: string },
  now: number,
): Promise<Outcome<Paired, "bad-code">> {
  return database.transaction(async (sql) => {
    const code = await takeCode(sql, wanted.code, now);
    if (code === null || code.shop !== null) return badCode();
    const shop = randomText(16);
    await sql.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES (?, ?, 0, ?)", [
      shop,
      wanted.shop,
      now,
    ]);
    const person = await addPerson(sql, shop, wanted.person, "owner", [], now);
    return accept(await addDevice(sql, shop, person, wanted.device, now));
  });
}

/** A code for one more device: of a person that is there, or of a new one. */
export async function invite(
  database: Database,
  shop: string,
  who:
    | { readonly person: string }
    | { readonly name: string; readonly role: Role; readonly bikes: readonly string[] },
  now: number,
): Promise<
  Outcome<{ readonly code: string; readonly expiresAt: number; readonly person: string }, "no-such-person">
> {
  return database.transaction(async (sql) => {
    const person =
      "person" in who ? who.person : await addPerson(sql, shop, who.name, who.role, who.bikes, now);
    const found = await sql.all("SELECT id FROM person WHERE shop = ? AND id = ?", [shop, person]);
    if (found.length === 0) return refuse("no-such-person", "Nobody of that name works in this shop.");
    const expiresAt = now + CODE_MINUTES * 60_000;
    await sql.run("DELETE FROM pairing WHERE expires_at <= ?", [now]);
    return accept({ code: await newCode(sql, shop, person, expiresAt), expiresAt, person });
  });
}

/** Pairs a device with a code. */
export async function pair(
  database: Database,
  wanted: { readonly code: string; readonly device: string },
  now: number,
): Promise<Outcome<Paired, "bad-code">> {
  return database.transaction(async (sql) => {
    const code = await takeCode(sql, wanted.code, now);
    if (code === null || code.shop === null || code.person === null) return badCode();
    return accept(await addDevice(sql, code.shop, code.person, wanted.device, now));
  });
}

async function addPerson(
  sql: Sql,
  shop: string,
  name: string,
  role: Role,
  bikes: readonly string[],
  now: number,
): Promise<string> {
  const id = randomText(12);
  await sql.run("INSERT INTO person (shop, id, name, role, created_at) VALUES (?, ?, ?, ?, ?)", [
    shop,
    id,
    name,
    role,
    now,
  ]);
  await setBikes(sql, shop, id, bikes);
  return id;
}

/** Which bikes are a rider's. */
export async function setBikes(
  sql: Sql,
  shop: string,
  person: string,
  bikes: readonly string[],
): Promise<void> {
  await sql.run("DELETE FROM person_bike WHERE shop = ? AND person = ?", [shop, person]);
  for (const bike of new Set(bikes)) {
    await sql.run("INSERT INTO person_bike (shop, person, bike) VALUES (?, ?, ?)", [shop, person, bike]);
  }
}

async function addDevice(sql: Sql, shop: string, person: string, name: string, now: number): Promise<Paired> {
  const device = randomText(12);
  const token = newToken();
  await sql.run(
    "INSERT INTO device (id, shop, person, name, token_hash, created_at, seen_at) VALUES (?, ?, ?, ?, ?, ?, ?)",
    [device, shop, person, name, hashOf(token), now, now],
  );
  return { shop, person, device, token };
}
