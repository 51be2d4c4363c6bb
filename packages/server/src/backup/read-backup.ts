import { createHash } from "node:crypto";
import { createReadStream, readFileSync } from "node:fs";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { type Outcome, refuse } from "@jetwright/core";
import type * as z from "zod/mini";
import type { Database, Dialect, Sql } from "../database/database.ts";
import { type Arriving, readArriving } from "../shop/arriving.ts";
import { blobType } from "../shop/blob-types.ts";
import { beginEpoch } from "../shop/epoch.ts";
import { addRecordsIn } from "../shop/log.ts";
import { setBikes } from "../shop/pairing.ts";
import { randomText } from "../shop/secrets.ts";
import { type Manifest, type ManifestReason, readManifest, type ShopManifest } from "./manifest.ts";
import { BLOB_ROW, DEVICE_ROW, PERSON_ROW, SHOP_ROW } from "./rows.ts";

export type RestoreReason = ManifestReason | "not-empty" | "damaged-backup";

/** Records added at once, and bytes of a picture in one piece. */
const BATCH = 1000;
const PIECE = 256_000;

/** What of a backup does not read; nothing of it is kept then. */
class Damaged extends Error {}

/**
 * Puts a backup into tables that hold no shop yet, as a whole or not at all. A new life of the database begins, so
 * every device reads it anew and sends what it has; paired devices go on.
 */
export async function readBackup(
  database: Database,
  folder: string,
): Promise<Outcome<Manifest, RestoreReason>> {
  const manifest = readManifest(folder);
  if (!manifest.ok) return manifest;
  try {
    return await database.transaction(async (sql): Promise<Outcome<Manifest, RestoreReason>> => {
      if ((await sql.all("SELECT id FROM shop LIMIT 1")).length > 0) {
        return refuse(
          "not-empty",
          "There is a shop already. Put the backup into an empty folder or database.",
        );
      }
      for (const shop of manifest.value.shops)
        await readShop(sql, database.dialect, join(folder, shop.id), shop);
      await sql.run("DELETE FROM meta WHERE key = 'server'");
      await sql.run("INSERT INTO meta (key, value) VALUES ('server', ?)", [manifest.value.server]);
      // A first code made for the empty tables would open one more shop.
      await sql.run("DELETE FROM pairing");
      await beginEpoch(sql);
      return manifest;
    });
  } catch (error) {
    if (error instanceof Damaged) return refuse("damaged-backup", `${error.message} Nothing was put back.`);
    throw error;
  }
}

async function readShop(sql: Sql, dialect: Dialect, folder: string, about: ShopManifest): Promise<void> {
  const { id: shop } = about;
  const [row] = rowsOf(folder, "shop.json", SHOP_ROW, about);
  if (row === undefined) throw new Damaged(`shop.json of ${shop} is empty.`);
  await sql.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES (?, ?, 0, ?)", [
    shop,
    row.name,
    row.createdAt,
  ]);
  for (const person of rowsOf(folder, "people.jsonl", PERSON_ROW, about)) {
    await sql.run("INSERT INTO person (shop, id, name, role, created_at) VALUES (?, ?, ?, ?, ?)", [
      shop,
      person.id,
      person.name,
      person.role,
      person.createdAt,
    ]);
    await setBikes(sql, shop, person.id, person.bikes);
  }
  for (const device of rowsOf(folder, "devices.jsonl", DEVICE_ROW, about)) {
    await sql.run(
      `INSERT INTO device (id, shop, person, name, token_hash, created_at, seen_at, revoked_at)
       VALUES (?, ?, ?, ?, ?, ?, ?, ?)`,
      [
        device.id,
        shop,
        device.person,
        device.name,
        device.tokenHash,
        device.createdAt,
        device.seenAt,
        device.revokedAt,
      ],
    );
  }
  const records = await readLog(sql, dialect, folder, about);
  const blobs = await readBlobs(sql, folder, about);
  if (records !== about.records || blobs !== about.blobs) {
    throw new Damaged(`${shop} has ${records} records and ${blobs} pictures, not what its backup says.`);
  }
}

/** The rows of one of the small files, its fingerprint looked at first. */
function rowsOf<T>(
  folder: string,
  name: string,
  form: z.ZodMiniType<T>,
  { files }: ShopManifest,
): readonly T[] {
  const text = bytesOf(join(folder, name));
  if (createHash("sha256").update(text).digest("hex") !== files[name])
    throw new Damaged(`${name} was changed.`);
  return text
    .toString("utf8")
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => {
      const read = form.safeParse(JSON.parse(line));
      if (!read.success) throw new Damaged(`${name} does not have the form it needs.`);
      return read.data;
    });
}

function bytesOf(path: string): Buffer {
  try {
    return readFileSync(path);
  } catch (error) {
    throw new Damaged(`${path} cannot be read: ${(error as Error).message}.`);
  }
}

async function readLog(
  sql: Sql,
  dialect: Dialect,
  folder: string,
  { id, files }: ShopManifest,
): Promise<number> {
  const path = join(folder, "log.jsonl");
  const digest = createHash("sha256");
  const file = createReadStream(path).on("data", (piece) => digest.update(piece));
  let count = 0;
  let batch: Arriving[] = [];
  const add = async () => {
    const arrivals = await addRecordsIn(sql, dialect, id, batch);
    if (arrivals.some((one) => one !== "added")) throw new Damaged(`${path} has an id twice.`);
    count += batch.length;
    batch = [];
  };
  try {
    for await (const line of createInterface({ input: file, crlfDelay: Number.POSITIVE_INFINITY })) {
      const read = readArriving(line);
      if (!read.ok) throw new Damaged(`${path}: ${read.detail}`);
      batch.push(read.value);
      if (batch.length >= BATCH) await add();
    }
  } catch (error) {
    if ((error as NodeJS.ErrnoException).syscall === undefined) throw error;
    throw new Damaged(`${path} cannot be read: ${(error as Error).message}.`);
  } finally {
    file.destroy();
  }
  await add();
  if (digest.digest("hex") !== files["log.jsonl"]) throw new Damaged(`${path} was changed.`);
  return count;
}

async function readBlobs(sql: Sql, folder: string, about: ShopManifest): Promise<number> {
  const rows = rowsOf(folder, "blobs.jsonl", BLOB_ROW, about);
  for (const { hash, size, type, createdAt } of rows) {
    const bytes = bytesOf(join(folder, "blobs", hash));
    const right = createHash("sha256").update(bytes).digest("hex") === hash && bytes.length === size;
    if (!right || blobType(type) === null) throw new Damaged(`The picture ${hash} was changed.`);
    const upload = randomText(16);
    for (let place = 0; place < size; place += PIECE) {
      await sql.run("INSERT INTO piece (upload, place, bytes) VALUES (?, ?, ?)", [
        upload,
        place,
        bytes.subarray(place, place + PIECE),
      ]);
    }
    await sql.run("INSERT INTO blob (shop, hash, upload, size, type, created_at) VALUES (?, ?, ?, ?, ?, ?)", [
      about.id,
      hash,
      upload,
      size,
      type,
      createdAt,
    ]);
  }
  return rows.length;
}
