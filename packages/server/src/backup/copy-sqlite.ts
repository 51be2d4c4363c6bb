import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { accept, type Outcome, refuse } from "@jetwright/core";
import BetterSqlite from "better-sqlite3";

export type CopyReason = "already-there" | "not-a-backup" | "damaged-backup";

/** All pages in one step: a copy in several begins anew whenever another process writes between them. */
const EVERY_PAGE = 0x7fffffff;

/**
 * Copies a SQLite database as of one moment to a new file, by SQLite's own way to copy a database in use; the
 * server may go on meanwhile. What is copied is read through once before the copy gets its name.
 */
export async function copySqlite(from: string, to: string): Promise<Outcome<null, CopyReason>> {
  if (existsSync(to)) return refuse("already-there", `${to} is there already. Name a new file.`);
  if (!existsSync(from)) return refuse("not-a-backup", `There is no file ${from}.`);
  const part = `${to}.part`;
  rmSync(part, { force: true });
  mkdirSync(dirname(to), { recursive: true, mode: 0o700 });
  // Only this user may read what customers told the shop.
  writeFileSync(part, "", { flag: "wx", mode: 0o600 });
  try {
    const source = new BetterSqlite(from, { readonly: true, fileMustExist: true });
    try {
      await source.backup(part, { progress: () => EVERY_PAGE });
    } finally {
      source.close();
    }
    const copy = new BetterSqlite(part);
    // One file, without a write-ahead log beside it.
    copy.pragma("journal_mode = DELETE");
    const health = copy.pragma("integrity_check", { simple: true });
    const ours = copy.prepare("SELECT 1 FROM sqlite_master WHERE name = 'migration'").get() !== undefined;
    copy.close();
    if (!ours) return refuse("not-a-backup", `${from} is a database, but not one of this server.`);
    if (health !== "ok") return refuse("damaged-backup", `${from} is damaged: ${String(health)}`);
    renameSync(part, to);
    return accept(null);
  } catch (error) {
    const code = (error as { code?: unknown }).code;
    if (code === "SQLITE_NOTADB") return refuse("not-a-backup", `${from} is no database.`);
    if (code === "SQLITE_CORRUPT") return refuse("damaged-backup", `${from} is damaged.`);
    throw error;
  } finally {
    for (const end of ["", "-wal", "-shm"]) rmSync(`${part}${end}`, { force: true });
  }
}
