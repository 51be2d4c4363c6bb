/** One row as a database gives it; whole numbers come as numbers on both. */
export type Row = Readonly<Record<string, unknown>>;
export type Parameter = string | number | null | Uint8Array;

/** A column of rows added in bulk, with its type as PostgreSQL names it. */
export type Column = readonly [name: string, type: "text" | "bigint"];

/** Statements with `?` for each parameter, the same text for both databases. */
export interface Sql {
  readonly all: <R extends Row>(text: string, parameters?: readonly Parameter[]) => Promise<readonly R[]>;
  /** Gives how many rows it touched. */
  readonly run: (text: string, parameters?: readonly Parameter[]) => Promise<number>;
  readonly insertMany: (
    table: string,
    columns: readonly Column[],
    rows: readonly (readonly Parameter[])[],
  ) => Promise<void>;
}

export interface Database extends Sql {
  readonly dialect: Dialect;
  /** Runs the work as a whole or not at all; what it threw is thrown on. On SQLite one at a time. */
  readonly transaction: <T>(work: (sql: Sql) => Promise<T>) => Promise<T>;
  /** Reads as of one moment, whatever is written meanwhile; nobody who writes waits for it. */
  readonly snapshot: <T>(work: (sql: Sql) => Promise<T>) => Promise<T>;
  readonly close: () => Promise<void>;
}

/** Where the two databases are written differently. */
export interface Dialect {
  readonly name: "sqlite" | "postgres";
  /** The texts of a JSON list given as one parameter, to stand behind IN. */
  readonly listed: string;
  /** Behind a SELECT: keep the row from others until the transaction ends. */
  readonly forUpdate: string;
  readonly bytes: string;
}

export type Trouble = "full" | "away" | "busy";

/** The database could not do it now, through no fault of the request: nothing was changed, and it may be tried again. */
export class DatabaseTrouble extends Error {
  readonly trouble: Trouble;
  constructor(trouble: Trouble, cause: unknown) {
    super(`The database is ${trouble}: ${cause instanceof Error ? cause.message : String(cause)}`, { cause });
    this.trouble = trouble;
  }
}

/** The one row of an answer. A statement that must give one and does not is a bug of ours and throws RangeError. */
export function only<R extends Row>(rows: readonly R[]): R {
  if (rows.length !== 1) throw new RangeError(`One row was expected, got ${rows.length}`);
  return rows[0]!;
}
