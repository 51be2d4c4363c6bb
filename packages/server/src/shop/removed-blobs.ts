import type { Database, Sql } from "../database/database.ts";

/** A picture that no record names any more stays this long, so that its removal can be taken back. */
const KEPT_MILLISECONDS = 30 * 86_400_000;

interface Removed {
  readonly [column: string]: unknown;
  readonly shop: string;
  readonly hash: string;
}

/** A condition on the table of records: one counts unless it is struck by one that nobody struck. */
export const COUNTS = `NOT EXISTS (
  SELECT 1 FROM record strike WHERE strike.shop = record.shop AND strike.target = record.id AND NOT EXISTS (
    SELECT 1 FROM record undo WHERE undo.shop = strike.shop AND undo.target = strike.id))`;

const UNNAMED = `NOT EXISTS (
  SELECT 1 FROM blob_use JOIN record ON record.shop = blob_use.shop AND record.id = blob_use.record
  WHERE blob_use.shop = blob.shop AND blob_use.hash = blob.hash AND ${COUNTS})`;

/** Since when a picture is unnamed stands in the table of single facts, under this and its shop and hash. */
const SINCE = "unnamed since, ";

/** Deletes pictures and clips that for a month no record that counts has named; gives how many. */
export async function sweepRemoved(database: Database, now: number): Promise<number> {
  return database.transaction(async (sql) => {
    const rows = await sql.all<Removed>(`SELECT shop, hash FROM blob WHERE ${UNNAMED}`);
    const noted = await sql.all<{ key: string; value: string }>(
      "SELECT key, value FROM meta WHERE substr(key, 1, ?) = ?",
      [SINCE.length, SINCE],
    );
    const since = new Map(noted.map(({ key, value }) => [key, Number(value)]));
    let deleted = 0;
    for (const row of rows) {
      const key = `${SINCE}${row.shop} ${row.hash}`;
      const from = since.get(key);
      if (from === undefined) {
        await sql.run("INSERT INTO meta (key, value) VALUES (?, ?) ON CONFLICT (key) DO NOTHING", [
          key,
          String(now),
        ]);
      }
      if (from === undefined || now - from < KEPT_MILLISECONDS) since.delete(key);
      else deleted += await deleteBlob(sql, row);
    }
    // What is left is of pictures that are named again, or gone.
    for (const key of since.keys()) await sql.run("DELETE FROM meta WHERE key = ?", [key]);
    return deleted;
  });
}

async function deleteBlob(sql: Sql, { shop, hash }: Removed): Promise<number> {
  await sql.run("DELETE FROM piece WHERE upload IN (SELECT upload FROM blob WHERE shop = ? AND hash = ?)", [
    shop,
    hash,
  ]);
  return sql.run("DELETE FROM blob WHERE shop = ? AND hash = ?", [shop, hash]);
}
