import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Database } from "../database/database.ts";
import { openPostgres } from "../database/postgres.ts";
import { openSqlite } from "../database/sqlite.ts";

export type Environment = Readonly<Record<string, string | undefined>>;
type Log = (fields: Readonly<Record<string, unknown>>) => void;

/** Name of the log's file in the data folder. */
export const LOG_FILE = "log.sqlite";

/** The database that the environment names (DATABASE_URL), else one file in the data folder, made when it is not there. */
export function openDatabase(env: Environment, dataFolder: string, log: Log): Database {
  if (env.DATABASE_URL) {
    return openPostgres(env.DATABASE_URL, {
      onLost: (error) => log({ what: "database", trouble: "connection lost", why: error.message }),
    });
  }
  // Only this user may read what customers told the shop.
  mkdirSync(dataFolder, { recursive: true, mode: 0o700 });
  return openSqlite(join(dataFolder, LOG_FILE));
}

/** Stops once when the system asks for it; a second time ends at once. */
export function stopWhenAsked(stop: () => Promise<void>): void {
  let asked = false;
  const end = (signal: NodeJS.Signals) => {
    if (asked) process.exit(signal === "SIGINT" ? 130 : 143);
    asked = true;
    void stop().then(() => process.exit(0));
  };
  process.on("SIGINT", end);
  process.on("SIGTERM", end);
}
