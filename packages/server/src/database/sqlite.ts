import BetterSqlite, { type Database as Connection, type Statement } from "better-sqlite3";
import {
  type Database,
  DatabaseTrouble,
  type Dialect,
  type Parameter,
  type Row,
  type Sql,
} from "./database.ts";

const DIALECT: Dialect = {
  name: "sqlite",
  listed: "(SELECT value FROM json_each(?))",
  forUpdate: "",
  bytes: "BLOB",
};

/**
 * The log in one SQLite file: write-ahead log, and every commit on the disk before it counts
 * (`synchronous=FULL`). One connection writes, one at a time; another reads beside it.
 */
export function openSqlite(path: string): Database {
  const writer = open(path);
  const reader = path === ":memory:" ? writer : open(path);
  if (reader !== writer) reader.pragma("query_only = ON");
  const writing = sqlOn(writer);
  const reading = sqlOn(reader);
  let last: Promise<unknown> = Promise.resolve();

  /** Waits for the one before; a failure of it is none of ours. */
  function inTurn<T>(work: () => Promise<T>): Promise<T> {
    const turn = last.then(work, work);
    last = turn.catch(() => undefined);
    return turn;
  }

  async function transaction<T>(work: (sql: Sql) => Promise<T>): Promise<T> {
    await writing.run("BEGIN IMMEDIATE");
    try {
      const result = await work(writing);
      await writing.run("COMMIT");
      return result;
    } catch (error) {
      // A full disk may have undone it already.
      if (writer.inTransaction) writer.exec("ROLLBACK");
      throw error;
    }
  }

  return {
    dialect: DIALECT,
    all: (text, parameters) =>
      reader === writer ? inTurn(() => writing.all(text, parameters)) : reading.all(text, parameters),
    run: (text, parameters) => inTurn(() => writing.run(text, parameters)),
    insertMany: (table, columns, rows) => inTurn(() => writing.insertMany(table, columns, rows)),
    transaction: (work) => inTurn(() => transaction(work)),
    snapshot: async (work) => {
      if (reader === writer) return inTurn(() => transaction(work));
      // A connection of its own: in a write-ahead log its reading sees what stood when it began.
      const own = open(path);
      try {
        own.exec("BEGIN");
        return await work(sqlOn(own));
      } finally {
        own.close();
      }
    },
    close: () =>
      inTurn(async () => {
        if (reader !== writer) reader.close();
        writer.close();
      }),
  };
}

function open(path: string): Connection {
  const connection = new BetterSqlite(path);
  connection.pragma("journal_mode = WAL");
  connection.pragma("synchronous = FULL");
  connection.pragma("foreign_keys = ON");
  connection.pragma("busy_timeout = 5000");
  return connection;
}

function sqlOn(connection: Connection): Sql {
  const prepared = new Map<string, Statement>();
  const statement = (text: string): Statement => {
    const known = prepared.get(text);
    if (known !== undefined) return known;
    const fresh = connection.prepare(text);
    prepared.set(text, fresh);
    return fresh;
  };
  return {
    all: async <R extends Row>(text: string, parameters: readonly Parameter[] = []) =>
      told(() => statement(text).all(...parameters) as R[]),
    run: async (text, parameters = []) => told(() => statement(text).run(...parameters).changes),
    insertMany: async (table, columns, rows) => {
      const names = columns.map(([name]) => name);
      const insert = statement(
        `INSERT INTO ${table} (${names.join(", ")}) VALUES (${names.map(() => "?").join(", ")})`,
      );
      told(() => {
        for (const row of rows) insert.run(...row);
      });
    },
  };
}

/** Runs it, and says apart what a full or failing disk and another process can do. */
function told<T>(work: () => T): T {
  try {
    return work();
  } catch (error) {
    const code = (error as { code?: unknown }).code;
    if (typeof code !== "string") throw error;
    if (code === "SQLITE_FULL") throw new DatabaseTrouble("full", error);
    if (code.startsWith("SQLITE_BUSY") || code.startsWith("SQLITE_LOCKED"))
      throw new DatabaseTrouble("busy", error);
    if (/^SQLITE_(IOERR|CANTOPEN|READONLY)/.test(code)) throw new DatabaseTrouble("away", error);
    throw error;
  }
}
