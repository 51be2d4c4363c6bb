import type { Database, Sql } from "../database/database.ts";
import { randomText } from "./secrets.ts";

/** The life of this database: a text that changes when a backup is put back. */
export async function epochOf(database: Database): Promise<string> {
  return metaOf(database, "epoch", () => randomText(12));
}

/** Which server this is; stays when a backup is put back. */
export async function serverIdOf(database: Database): Promise<string> {
  return metaOf(database, "server", () => randomText(8));
}

/** Begins a new life: every device reads the log anew and sends what it has. */
export async function beginEpoch(sql: Sql): Promise<void> {
  await sql.run("DELETE FROM meta WHERE key = 'epoch'");
  await sql.run("INSERT INTO meta (key, value) VALUES ('epoch', ?)", [randomText(12)]);
}

async function metaOf(database: Database, key: string, make: () => string): Promise<string> {
  const read = () => database.all<{ value: string }>("SELECT value FROM meta WHERE key = ?", [key]);
  const found = (await read())[0]?.value;
  if (found !== undefined) return found;
  // Two processes may start at once: the first one's word holds.
  await database.run("INSERT INTO meta (key, value) VALUES (?, ?) ON CONFLICT (key) DO NOTHING", [
    key,
    make(),
  ]);
  return (await read())[0]!.value;
}
