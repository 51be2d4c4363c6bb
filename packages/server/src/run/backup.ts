import { existsSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { copySqlite } from "../backup/copy-sqlite.ts";
import { writeBackup } from "../backup/write-backup.ts";
import { stepsDone } from "../database/migrate.ts";
import { LOG_FILE, openDatabase } from "./open-database.ts";
import { BAD_INPUT, FINE, type ServerCommand, type Terminal } from "./terminal.ts";

const MANUAL = `
jetwright backup TO [--data FOLDER]

Writes a backup of the shop's server, which may go on running. TO is new:

  jetwright backup backups/2026-11-25           a folder of plain files: each shop's log
                                                as JSON Lines, people, devices, pictures
  jetwright backup backups/2026-11-25.sqlite    one file, an exact copy of the database

--data is the server's data folder (else JETWRIGHT_DATA, else data). With DATABASE_URL the
backup is of that PostgreSQL, and only the folder can be written; pg_dump does as well.
The backup holds what customers told the shop: keep it where only the shop reads it.
`.trim();

/** Whether a name asks for one SQLite file. */
export const isSqliteName = (name: string): boolean => name.endsWith(".sqlite");

export const backup: ServerCommand = { name: "backup", manual: MANUAL, run };

async function run(argv: readonly string[], { env, out, error }: Terminal): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { data: { type: "string", default: env.JETWRIGHT_DATA ?? "data" } },
  });
  const [to, ...more] = positionals;
  const wrong = (text: string): number => {
    error(`jetwright: ${text}\n`);
    return BAD_INPUT;
  };
  if (to === undefined || more.length > 0) return wrong("Name one new file or folder: jetwright backup TO.");
  const file = join(values.data, LOG_FILE);
  if (!env.DATABASE_URL && !existsSync(file)) {
    return wrong(`There is no log in ${values.data}. Name the server's data folder with --data.`);
  }
  if (isSqliteName(to)) {
    if (env.DATABASE_URL) return wrong("PostgreSQL is backed up into a folder, not into one file of SQLite.");
    const copied = await copySqlite(file, to);
    if (!copied.ok) return wrong(copied.detail);
    out(`Written to ${to}.\n`);
    return FINE;
  }
  const database = openDatabase(env, values.data, () => undefined);
  try {
    // Never brought up to date here: an older server may be at work on it.
    await stepsDone(database);
    const written = await writeBackup(database, to, Date.now());
    if (!written.ok) return wrong(written.detail);
    for (const { id, records, blobs } of written.value.shops) {
      out(`${id}: ${records} records, ${blobs} pictures and clips\n`);
    }
    out(`Written to ${to}.\n`);
    return FINE;
  } finally {
    await database.close();
  }
}
