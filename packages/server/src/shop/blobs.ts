import type { Database, Sql } from "../database/database.ts";
import { type Scope, scopeCondition } from "./scope.ts";

/** A picture or clip that is wholly here. */
export interface Blob {
  readonly upload: string;
  readonly size: number;
  readonly type: string;
}

/** Whether a record that the scope sees names it. What no record names is neither taken nor given. */
export async function isNamed(
  database: Database,
  shop: string,
  scope: Scope,
  hash: string,
): Promise<boolean> {
  const { sql: condition, parameters } = scopeCondition(scope, database.dialect.listed);
  const rows = await database.all(
    `SELECT 1 AS one FROM record WHERE shop = ?
       AND id IN (SELECT blob_use.record FROM blob_use WHERE blob_use.shop = ? AND blob_use.hash = ?) ${condition} LIMIT 1`,
    [shop, shop, hash, ...parameters],
  );
  return rows.length > 0;
}

/** The one of a shop under this fingerprint; null when it is not there, or not wholly. */
export async function blobOf(sql: Sql, shop: string, hash: string): Promise<Blob | null> {
  const rows = await sql.all<{ upload: string; size: number; type: string }>(
    "SELECT upload, size, type FROM blob WHERE shop = ? AND hash = ?",
    [shop, hash],
  );
  return rows[0] ?? null;
}

/** Its bytes, piece by piece, in order; stops short when it is taken away meanwhile. */
export async function* piecesOf(sql: Sql, upload: string, size: number): AsyncGenerator<Uint8Array> {
  for (let place = 0; place < size; ) {
    const rows = await sql.all<{ bytes: Uint8Array }>(
      "SELECT bytes FROM piece WHERE upload = ? AND place = ?",
      [upload, place],
    );
    const bytes = rows[0]?.bytes;
    if (bytes === undefined) return;
    yield bytes;
    place += bytes.length;
  }
}
