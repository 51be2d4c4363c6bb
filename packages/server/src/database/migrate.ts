import type { Database, Sql } from "./database.ts";
import { MIGRATIONS, type Migration } from "./migrations.ts";

/**
 * Brings the tables to the newest shape, one step after the other, each as a whole or not at all; gives the names of the steps run.
 * Processes that start together wait for one another. Tables made by a newer version throw RangeError: going
 * back would lose what it wrote.
 */
export async function migrate(
  database: Database,
  migrations: readonly Migration[] = MIGRATIONS,
): Promise<readonly string[]> {
  return database.transaction(async (sql) => {
    if (database.dialect.name === "postgres") {
      // A number of ours alone; held until the transaction ends.
      await sql.all("SELECT pg_advisory_xact_lock(7305117)");
    }
    await sql.run("CREATE TABLE IF NOT EXISTS migration (name TEXT PRIMARY KEY, place BIGINT NOT NULL)");
    const done = await stepsDone(sql, migrations);
    const todo = migrations.slice(done);
    for (const [i, step] of todo.entries()) await take(sql, step, done + i, database);
    return todo.map(({ name }) => name);
  });
}

/** How many of the steps the tables have been through. Tables made by a newer version throw RangeError. */
export async function stepsDone(sql: Sql, migrations: readonly Migration[] = MIGRATIONS): Promise<number> {
  const done = await sql.all<{ name: string }>("SELECT name FROM migration ORDER BY place");
  const known = migrations.slice(0, done.length).map(({ name }) => name);
  const unknown = done.find(({ name }, i) => name !== known[i]);
  if (unknown !== undefined) {
    throw new RangeError(
      `This data was written by a newer version (step ${unknown.name}). Start that version, or restore a backup made before it.`,
    );
  }
  return done.length;
}

async function take(sql: Sql, step: Migration, place: number, { dialect }: Database): Promise<void> {
  for (const statement of step.statements(dialect)) await sql.run(statement);
  await sql.run("INSERT INTO migration (name, place) VALUES (?, ?)", [step.name, place]);
}
