import pg from "pg";
import {
  type Column,
  type Database,
  DatabaseTrouble,
  type Dialect,
  type Parameter,
  type Row,
  type Sql,
} from "./database.ts";

const DIALECT: Dialect = {
  name: "postgres",
  listed: "(SELECT jsonb_array_elements_text(?::jsonb))",
  forUpdate: "FOR UPDATE",
  bytes: "BYTEA",
};

/** Times that a transaction is tried again when the database says that another one was in its way. */
const TRIES = 5;

/** Whole numbers beyond 32 bits come as text unless told otherwise; ours stay below 2^53. */
const types = {
  getTypeParser: (oid: number, format?: "text" | "binary") =>
    oid === pg.types.builtins.INT8 ? Number : pg.types.getTypeParser(oid, format as "text"),
};

export interface PostgresOptions {
  /** Most connections at once. */
  readonly connections?: number;
  /** Told when a connection that nobody uses is lost, such as when the database stops. */
  readonly onLost?: (error: Error) => void;
}

/** The log in a PostgreSQL database, or one that speaks its protocol. The process keeps no state of its own. */
export function openPostgres(url: string, options: PostgresOptions = {}): Database {
  const pool = new pg.Pool({
    connectionString: url,
    max: options.connections ?? 10,
    connectionTimeoutMillis: 5000,
    idleTimeoutMillis: 30_000,
    statement_timeout: 30_000,
    application_name: "jetwright",
    types: types as pg.CustomTypesConfig,
  });
  // Without a listener an idle connection that breaks would end the process.
  pool.on("error", (error) => options.onLost?.(error));
  const loose = sqlOn(pool);

  async function once<T>(work: (sql: Sql) => Promise<T>, begin = "BEGIN"): Promise<T> {
    const client = await told(() => pool.connect());
    const ignore = () => undefined;
    client.on("error", ignore);
    let broken = false;
    try {
      const sql = sqlOn(client);
      await sql.run(begin);
      try {
        const result = await work(sql);
        await sql.run("COMMIT");
        return result;
      } catch (error) {
        await client.query("ROLLBACK").catch(() => {
          broken = true;
        });
        throw error;
      }
    } finally {
      client.off("error", ignore);
      client.release(broken);
    }
  }

  return {
    ...loose,
    dialect: DIALECT,
    transaction: async (work) => {
      for (let left = TRIES; ; left--) {
        try {
          return await once(work);
        } catch (error) {
          if (left <= 1 || !(error instanceof DatabaseTrouble && error.trouble === "busy")) throw error;
        }
      }
    },
    snapshot: (work) => once(work, "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY"),
    close: () => pool.end(),
  };
}

const numbered = new Map<string, string>();

/** `?` as `$1`, `$2` and so on. */
function withNumbers(text: string): string {
  const known = numbered.get(text);
  if (known !== undefined) return known;
  let count = 0;
  const fresh = text.replaceAll("?", () => `$${++count}`);
  numbered.set(text, fresh);
  return fresh;
}

function sqlOn(client: pg.Pool | pg.PoolClient): Sql {
  const query = (text: string, parameters: readonly unknown[]) =>
    told(() => client.query(withNumbers(text), parameters as unknown[]));
  return {
    all: async <R extends Row>(text: string, parameters: readonly Parameter[] = []) =>
      (await query(text, parameters)).rows as R[],
    run: async (text, parameters = []) => (await query(text, parameters)).rowCount ?? 0,
    insertMany: async (table: string, columns: readonly Column[], rows) => {
      if (rows.length === 0) return;
      const names = columns.map(([name]) => name).join(", ");
      const lists = columns.map(([, type]) => `?::${type}[]`).join(", ");
      await query(
        `INSERT INTO ${table} (${names}) SELECT * FROM unnest(${lists})`,
        columns.map((_, i) => rows.map((row) => row[i])),
      );
    },
  };
}

/**
 * Codes of PostgreSQL (its manual, appendix A): 53100 disk full; 40001, 40P01 and 55P03 another was in the way; 08, 57P,
 * 58 and the rest of 53: no connection, stopping, failing system, out of something. Of Node: names and networks not found.
 */
function troubleOf(error: unknown): DatabaseTrouble | null {
  if (!(error instanceof Error)) return null;
  const code = (error as { code?: unknown }).code;
  if (code === "53100") return new DatabaseTrouble("full", error);
  if (code === "40001" || code === "40P01" || code === "55P03") return new DatabaseTrouble("busy", error);
  const away =
    typeof code === "string" &&
    /^(08|57P|53|58|ECONN|ENOENT|ENOTFOUND|EAI_|EHOST|ENET|EPIPE|ETIMEDOUT|57014|25006)/.test(code);
  // The driver's own words for a connection that ended have no code.
  if (away || /connection terminated|timeout exceeded|not queryable/i.test(error.message)) {
    return new DatabaseTrouble("away", error);
  }
  return null;
}

async function told<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    throw troubleOf(error) ?? error;
  }
}
