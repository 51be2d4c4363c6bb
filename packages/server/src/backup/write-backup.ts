import { createHash } from "node:crypto";
import { closeSync, existsSync, fsyncSync, mkdirSync, openSync, readdirSync, writeSync } from "node:fs";
import { join } from "node:path";
import { accept, type Outcome, refuse } from "@jetwright/core";
import type { Database, Sql } from "../database/database.ts";
import { piecesOf } from "../shop/blobs.ts";
import { serverIdOf } from "../shop/epoch.ts";
import { MANIFEST, type Manifest, type ShopManifest } from "./manifest.ts";
import type { BlobRow, DeviceRow, PersonRow } from "./rows.ts";

const PAGE = 1000;

/**
 * Writes everything as of one moment into a new folder, in files that read without us: each shop's log as it is
 * exported, its people, devices and pictures. The server may go on meanwhile.
 */
export async function writeBackup(
  database: Database,
  folder: string,
  now: number,
): Promise<Outcome<Manifest, "not-empty">> {
  if (existsSync(folder) && readdirSync(folder).length > 0) {
    return refuse("not-empty", `${folder} is there already and is not empty. Name a new folder.`);
  }
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const server = await serverIdOf(database);
  const shops = await database.snapshot(async (sql) => {
    const rows = await sql.all<{ id: string; name: string; created_at: number }>(
      "SELECT id, name, created_at FROM shop ORDER BY created_at, id",
    );
    const written: ShopManifest[] = [];
    for (const { id, name, created_at } of rows) {
      written.push(await writeShop(sql, join(folder, id), id, { name, createdAt: created_at }));
    }
    return written;
  });
  const manifest: Manifest = {
    format: "jetwright-backup",
    version: 1,
    madeAt: new Date(now).toISOString(),
    server,
    shops,
  };
  new NewFile(join(folder, MANIFEST)).add(JSON.stringify(manifest, null, 2)).end();
  return accept(manifest);
}

/** A file that is not there yet, for this user alone, on the disk when it has ended. */
class NewFile {
  readonly #file: number;
  readonly #digest = createHash("sha256");

  constructor(path: string) {
    this.#file = openSync(path, "wx", 0o600);
  }

  add(piece: string | Uint8Array): this {
    const bytes = typeof piece === "string" ? Buffer.from(piece) : piece;
    this.#digest.update(bytes);
    for (let at = 0; at < bytes.length; ) at += writeSync(this.#file, bytes, at);
    return this;
  }

  /** Gives the SHA-256 of all that was added. */
  end(): string {
    fsyncSync(this.#file);
    closeSync(this.#file);
    return this.#digest.digest("hex");
  }
}

const lines = (rows: readonly object[]): string => rows.map((row) => `${JSON.stringify(row)}\n`).join("");

async function writeShop(
  sql: Sql,
  folder: string,
  shop: string,
  about: { readonly name: string; readonly createdAt: number },
): Promise<ShopManifest> {
  mkdirSync(join(folder, "blobs"), { recursive: true, mode: 0o700 });
  const write = (name: string, text: string) => new NewFile(join(folder, name)).add(text).end();
  const log = new NewFile(join(folder, "log.jsonl"));
  let records = 0;
  for (let seq = 0; ; ) {
    const rows = await sql.all<{ seq: number; line: string }>(
      "SELECT seq, line FROM record WHERE shop = ? AND seq > ? ORDER BY seq LIMIT ?",
      [shop, seq, PAGE],
    );
    if (rows.length === 0) break;
    log.add(rows.map(({ line }) => `${line}\n`).join(""));
    records += rows.length;
    seq = rows.at(-1)!.seq;
  }
  const blobs = await writeBlobs(sql, join(folder, "blobs"), shop);
  const files = {
    "shop.json": write("shop.json", `${JSON.stringify(about)}\n`),
    "log.jsonl": log.end(),
    "people.jsonl": write("people.jsonl", lines(await peopleOf(sql, shop))),
    "devices.jsonl": write("devices.jsonl", lines(await devicesOf(sql, shop))),
    "blobs.jsonl": write("blobs.jsonl", lines(blobs)),
  };
  return { id: shop, records, blobs: blobs.length, files };
}

async function peopleOf(sql: Sql, shop: string): Promise<readonly PersonRow[]> {
  const people = await sql.all<Omit<PersonRow, "bikes">>(
    `SELECT id, name, role, created_at AS "createdAt" FROM person WHERE shop = ? ORDER BY created_at, id`,
    [shop],
  );
  const owned = await sql.all<{ person: string; bike: string }>(
    "SELECT person, bike FROM person_bike WHERE shop = ? ORDER BY bike",
    [shop],
  );
  return people.map((one) => ({
    ...one,
    bikes: owned.filter(({ person }) => person === one.id).map(({ bike }) => bike),
  }));
}

const devicesOf = (sql: Sql, shop: string): Promise<readonly DeviceRow[]> =>
  sql.all<DeviceRow>(
    `SELECT id, person, name, token_hash AS "tokenHash", created_at AS "createdAt", seen_at AS "seenAt",
       revoked_at AS "revokedAt" FROM device WHERE shop = ? ORDER BY created_at, id`,
    [shop],
  );

async function writeBlobs(sql: Sql, folder: string, shop: string): Promise<readonly BlobRow[]> {
  const rows = await sql.all<BlobRow & { upload: string }>(
    `SELECT hash, upload, size, type, created_at AS "createdAt" FROM blob WHERE shop = ? ORDER BY hash`,
    [shop],
  );
  for (const { hash, upload, size } of rows) {
    const file = new NewFile(join(folder, hash));
    for await (const piece of piecesOf(sql, upload, size)) file.add(piece);
    file.end();
  }
  return rows.map(({ upload: _, ...row }) => row);
}
