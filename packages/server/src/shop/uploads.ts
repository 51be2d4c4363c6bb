import { createHash } from "node:crypto";
import { accept, type Outcome, refuse } from "@jetwright/core";
import { type Database, only, type Sql } from "../database/database.ts";
import { blobOf, piecesOf } from "./blobs.ts";
import { randomText } from "./secrets.ts";

/** Who uploads what. */
export interface Wanted {
  readonly shop: string;
  readonly device: string;
  readonly hash: string;
  readonly size: number;
  readonly type: string;
}

/** How many bytes have arrived, and whether the whole is here and is what its fingerprint says. */
export interface Progress {
  readonly arrived: number;
  readonly whole: boolean;
}

export type UploadReason = "not-named" | "wrong-offset" | "shop-full" | "other-content";

/** Most bytes of all pictures and clips of a shop, those on their way included. */
export const SHOP_BYTES = 5_000_000_000;
/** Uploads that a device may have begun; the oldest are forgotten first. */
const MOST_BEGUN = 8;
/** An upload begun longer ago is forgotten when its shop needs the room. */
const FORGET_MILLISECONDS = 7 * 86_400_000;

interface Begun {
  readonly id: string;
  readonly size: number;
  readonly type: string;
  readonly arrived: number;
}

/** How far this device has come with it. */
export async function progressOf(
  database: Database,
  { shop, device, hash }: Pick<Wanted, "shop" | "device" | "hash">,
): Promise<Progress> {
  const there = await blobOf(database, shop, hash);
  if (there !== null) return { arrived: there.size, whole: true };
  return { arrived: (await begun(database, shop, device, hash))?.arrived ?? 0, whole: false };
}

/**
 * Takes a piece that goes on where the last one ended. The last piece makes it whole: its bytes are counted
 * into their SHA-256, and when that is another than the name says, all of it is thrown away.
 */
export async function addPiece(
  database: Database,
  wanted: Wanted,
  offset: number,
  bytes: Uint8Array,
  now: number,
  most = SHOP_BYTES,
): Promise<Outcome<Progress, UploadReason>> {
  const { forUpdate } = database.dialect;
  return database.transaction(async (sql) => {
    const last = offset + bytes.length >= wanted.size;
    if (!(await holdName(sql, forUpdate, wanted, last))) {
      return refuse("not-named", "No record names this picture or clip any more, so it is not kept.");
    }
    const there = await blobOf(sql, wanted.shop, wanted.hash);
    if (there !== null) {
      // Another device was faster.
      const own = await begun(sql, wanted.shop, wanted.device, wanted.hash);
      if (own !== null) await forget(sql, [own.id]);
      return accept({ arrived: there.size, whole: true });
    }
    const upload = await begin(sql, forUpdate, wanted, now, most);
    if (!upload.ok) return upload;
    const { id, arrived, size, type } = upload.value;
    const end = offset + bytes.length;
    if (offset !== arrived || size !== wanted.size || type !== wanted.type || end > size) {
      const detail = `${arrived} of ${size} bytes of ${type} are here. Go on from there.`;
      return refuse("wrong-offset", detail);
    }
    if (bytes.length > 0) {
      await sql.run("INSERT INTO piece (upload, place, bytes) VALUES (?, ?, ?)", [id, offset, bytes]);
      await sql.run("UPDATE upload SET arrived = ? WHERE id = ?", [end, id]);
    }
    return end < size ? accept({ arrived: end, whole: false }) : finish(sql, id, wanted, now);
  });
}

/**
 * Whether records name it, which stays so until the transaction ends: an erasure that takes the name away comes before
 * the piece or after it, and then takes the piece too.
 */
async function holdName(
  sql: Sql,
  forUpdate: string,
  { shop, hash, device }: Wanted,
  last: boolean,
): Promise<boolean> {
  // An erasure locks the shop before the names. A first and a last piece add rows that refer to the shop, which locks it
  // too: they do so at once, and nobody waits in a circle.
  if (last || (await begun(sql, shop, device, hash)) === null) await lockShop(sql, forUpdate, shop);
  const names = await sql.all(
    `SELECT record FROM blob_use WHERE shop = ? AND hash = ? ORDER BY record ${forUpdate}`,
    [shop, hash],
  );
  return names.length > 0;
}

const lockShop = (sql: Sql, forUpdate: string, shop: string) =>
  sql.all(`SELECT id FROM shop WHERE id = ? ${forUpdate}`, [shop]);

/** The upload that this device has begun, or a new one. The row of the shop is locked while one is made, so that its room is counted once. */
async function begin(
  sql: Sql,
  forUpdate: string,
  { shop, device, hash, size, type }: Wanted,
  now: number,
  most: number,
): Promise<Outcome<Begun, "shop-full">> {
  const known = await begun(sql, shop, device, hash, forUpdate);
  if (known !== null && known.size === size && known.type === type) return accept(known);
  if (known !== null) await forget(sql, [known.id]);
  await lockShop(sql, forUpdate, shop);
  await forgetOld(sql, shop, device, now);
  const { bytes } = only(
    await sql.all<{ bytes: number }>(
      `SELECT CAST((SELECT coalesce(sum(size), 0) FROM blob WHERE shop = ?)
         + (SELECT coalesce(sum(size), 0) FROM upload WHERE shop = ?) AS BIGINT) AS bytes`,
      [shop, shop],
    ),
  );
  if (bytes + size > most) {
    const detail = `The shop keeps at most ${Math.floor(most / 1e6)} MB of pictures and sound here.`;
    return refuse("shop-full", detail);
  }
  const id = randomText(16);
  await sql.run(
    `INSERT INTO upload (id, shop, hash, device, size, arrived, type, created_at) VALUES (?, ?, ?, ?, ?, 0, ?, ?)
     ON CONFLICT (shop, hash, device) DO NOTHING`,
    [id, shop, hash, device, size, type, now],
  );
  // Another request of this device may have begun it in the same moment.
  return accept((await begun(sql, shop, device, hash, forUpdate))!);
}

async function begun(
  sql: Sql,
  shop: string,
  device: string,
  hash: string,
  forUpdate = "",
): Promise<Begun | null> {
  const rows = await sql.all<Begun & { [key: string]: unknown }>(
    `SELECT id, size, type, arrived FROM upload WHERE shop = ? AND hash = ? AND device = ? ${forUpdate}`,
    [shop, hash, device],
  );
  return rows[0] ?? null;
}

async function finish(
  sql: Sql,
  id: string,
  { shop, hash, size, type }: Wanted,
  now: number,
): Promise<Outcome<Progress, "other-content">> {
  const digest = createHash("sha256");
  for await (const piece of piecesOf(sql, id, size)) digest.update(piece);
  if (digest.digest("hex") !== hash) {
    await forget(sql, [id]);
    return refuse(
      "other-content",
      "What arrived is not what its fingerprint says. Send it from its beginning.",
    );
  }
  const added = await sql.run(
    `INSERT INTO blob (shop, hash, upload, size, type, created_at) VALUES (?, ?, ?, ?, ?, ?)
     ON CONFLICT (shop, hash) DO NOTHING`,
    [shop, hash, id, size, type, now],
  );
  // Two devices may send the same picture; the first one's bytes stay.
  if (added === 0) await forget(sql, [id]);
  else await sql.run("DELETE FROM upload WHERE id = ?", [id]);
  return accept({ arrived: size, whole: true });
}

async function forgetOld(sql: Sql, shop: string, device: string, now: number): Promise<void> {
  const rows = await sql.all<{ id: string; device: string; created_at: number }>(
    "SELECT id, device, created_at FROM upload WHERE shop = ? ORDER BY created_at DESC, id",
    [shop],
  );
  const own = rows.filter((one) => one.device === device).slice(MOST_BEGUN - 1);
  const stale = rows.filter(({ created_at }) => now - created_at > FORGET_MILLISECONDS);
  await forget(sql, [...new Set([...own, ...stale].map(({ id }) => id))]);
}

async function forget(sql: Sql, ids: readonly string[]): Promise<void> {
  for (const id of ids) {
    await sql.run("DELETE FROM piece WHERE upload = ?", [id]);
    await sql.run("DELETE FROM upload WHERE id = ?", [id]);
  }
}
