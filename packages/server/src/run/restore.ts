import { existsSync, mkdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { readBackup } from "../backup/read-backup.ts";
import { restoreSqlite } from "../backup/restore-sqlite.ts";
import { migrate } from "../database/migrate.ts";
import { LOG_FILE, openDatabase } from "./open-database.ts";
import { BAD_INPUT, FINE, type ServerCommand, type Terminal } from "./terminal.ts";

const MANUAL = `
jetwright restore FROM [--data FOLDER]

Puts a backup back, with the server stopped, into a data folder without a log or a
PostgreSQL (DATABASE_URL) without a shop. FROM is what "jetwright backup" wrote. The folder
goes into either; so a shop moves from SQLite to PostgreSQL:

  jetwright backup moving
  DATABASE_URL=postgres://... jetwright restore moving

Start the server then. Paired devices go on, read the log anew and send what the backup
did not have. Devices shut out since the backup was made are let in again: shut them out.
`.trim();

export const restore: ServerCommand = { name: "restore", manual: MANUAL, run };

async function run(argv: readonly string[], { env, out, error }: Terminal): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { data: { type: "string", default: env.JETWRIGHT_DATA ?? "data" } },
  });
  const [from, ...more] = positionals;
  const wrong = (text: string): number => {
    error(`jetwright: ${text}\n`);
    return BAD_INPUT;
  };
  if (from === undefined || more.length > 0) return wrong("Name one backup: jetwright restore FROM.");
  if (!existsSync(from)) return wrong(`There is no backup at ${from}.`);
  if (!statSync(from).isDirectory()) {
    if (env.DATABASE_URL)
      return wrong("PostgreSQL is filled from a folder. Restore this file with SQLite first.");
    mkdirSync(values.data, { recursive: true, mode: 0o700 });
    const copied = await restoreSqlite(from, join(values.data, LOG_FILE));
    if (!copied.ok) return wrong(copied.detail);
    out(`Put back into ${values.data}.\n`);
    return FINE;
  }
  const database = openDatabase(env, values.data, () => undefined);
  try {
    await migrate(database);
    const read = await readBackup(database, from);
    if (!read.ok) return wrong(read.detail);
    for (const { id, records, blobs } of read.value.shops) {
      out(`${id}: ${records} records, ${blobs} pictures and clips\n`);
    }
    out(`Put back as of ${read.value.madeAt}.\n`);
    return FINE;
  } finally {
    await database.close();
  }
}
