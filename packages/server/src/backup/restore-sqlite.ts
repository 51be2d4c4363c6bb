import { existsSync, renameSync, rmSync } from "node:fs";
import { accept, type Outcome, refuse } from "@jetwright/core";
import { migrate } from "../database/migrate.ts";
import { openSqlite } from "../database/sqlite.ts";
import { beginEpoch } from "../shop/epoch.ts";
import { type CopyReason, copySqlite } from "./copy-sqlite.ts";

/**
 * Puts a copied SQLite database where a server will look for it, brought up to date and with a new life begun: a
 * server started on it sees the whole of that or nothing.
 */
export async function restoreSqlite(from: string, to: string): Promise<Outcome<null, CopyReason>> {
  // A write-ahead log left behind by another database would be played into this one (SQLite, "How To Corrupt An SQLite
  // Database File", on mispaired journals; from memory).
  const there = [to, `${to}-wal`, `${to}-shm`].find((path) => existsSync(path));
  if (there !== undefined) {
    return refuse(
      "already-there",
      `${there} is there already. Move it away, or name another folder with --data.`,
    );
  }
  const part = `${to}.restoring`;
  rmSync(part, { force: true });
  try {
    const copied = await copySqlite(from, part);
    if (!copied.ok) return copied;
    const database = openSqlite(part);
    try {
      await migrate(database);
      await database.transaction(async (sql) => {
        // A code used since then would count again.
        await sql.run("DELETE FROM pairing");
        await beginEpoch(sql);
      });
    } finally {
      await database.close();
    }
    renameSync(part, to);
    return accept(null);
  } finally {
    for (const end of ["", "-wal", "-shm"]) rmSync(`${part}${end}`, { force: true });
  }
}
