import type { Database, Dialect, Sql } from "../database/database.ts";
import { only } from "../database/database.ts";
import { type Arriving, ERASING } from "./arriving.ts";
import { type Cursor, readCursor, writeCursor } from "./cursor.ts";
import { epochOf } from "./epoch.ts";
import { emptyArriving, emptyStanding, forgetNames } from "./erasing.ts";
import { type Scope, scopeCondition, scopeMark } from "./scope.ts";
import { randomText } from "./secrets.ts";

/** What became of a record that was sent. */
export type Arrival = "added" | "known" | "conflict";

/** A piece of the log after a cursor. */
export interface Page {
  /** Why the cursor could not be used and the log begins anew: other data than the device knew, or other rights. */
  readonly restart: "epoch" | "scope" | null;
  readonly lines: readonly string[];
  readonly cursor: string;
  /** More lies behind this page. */
  readonly more: boolean;
}

/** Most records and characters of one page. */
const PAGE_RECORDS = 2000;
const PAGE_CHARACTERS = 4_000_000;

const COLUMNS = [
  ["shop", "text"],
  ["seq", "bigint"],
  ["id", "text"],
  ["kind", "text"],
  ["bike", "text"],
  ["target", "text"],
  ["hash", "text"],
  ["line", "text"],
  ["mark", "text"],
] as const;

/**
 * Adds records to a shop's log together or not at all; gives what became of each, in the order given. The
 * same record again is known and changes nothing; another record under a known id is a conflict and is not kept.
 *
 * The numbers that cursors use are given out while the row of the shop is locked, and the lock is held until the
 * commit: whoever sees a number sees every smaller one, whatever many writers do.
 */
export async function addRecords(
  database: Database,
  shop: string,
  records: readonly Arriving[],
): Promise<readonly Arrival[]> {
  return database.transaction((sql) => addRecordsIn(sql, database.dialect, shop, records));
}

/** The same, as a part of a larger transaction. */
export async function addRecordsIn(
  sql: Sql,
  dialect: Dialect,
  shop: string,
  given: readonly Arriving[],
): Promise<readonly Arrival[]> {
  const { listed, forUpdate } = dialect;
  const { last_seq: last, erasures } = only(
    await sql.all<{ last_seq: number; erasures: number }>(
      `SELECT last_seq, (SELECT count(*) FROM record WHERE record.shop = shop.id AND target = ?) AS erasures
         FROM shop WHERE id = ? ${forUpdate}`,
      [ERASING, shop],
    ),
  );
  const records = await emptyArriving(sql, shop, given, erasures);
  const ids = JSON.stringify(records.map(({ id }) => id));
  const there = await sql.all<{ id: string; hash: string }>(
    `SELECT id, hash FROM record WHERE shop = ? AND id IN ${listed}`,
    [shop, ids],
  );
  const hashes = new Map(there.map(({ id, hash }) => [id, hash]));
  const fresh: Arriving[] = [];
  const arrivals = records.map((record): Arrival => {
    const known = hashes.get(record.id);
    if (known !== undefined) return known === record.hash ? "known" : "conflict";
    hashes.set(record.id, record.hash);
    fresh.push(record);
    return "added";
  });
  if (fresh.length > 0) await file(sql, dialect, shop, last, fresh);
  return arrivals;
}

async function file(
  sql: Sql,
  dialect: Dialect,
  shop: string,
  last: number,
  fresh: readonly Arriving[],
): Promise<void> {
  const strikes = fresh.filter(({ target }) => target !== null);
  const struck = await bikesOf(
    sql,
    dialect.listed,
    shop,
    strikes.map(({ target }) => target!),
  );
  for (const { id, bike } of fresh) if (bike !== null) struck.set(id, bike);
  const mark = randomText(8);
  await sql.insertMany(
    "record",
    COLUMNS,
    fresh.map(({ id, kind, bike, target, hash, line }, i) => [
      shop,
      last + 1 + i,
      id,
      kind,
      target === null ? bike : (struck.get(target) ?? bike),
      target,
      hash,
      line,
      mark,
    ]),
  );
  const announced = await announceStrikes(sql, dialect.listed, shop, last + fresh.length, mark, fresh);
  const numbered = last + fresh.length + announced;
  const moved = announced + (await emptyStanding(sql, dialect, shop, numbered, mark, fresh));
  await forgetNames(sql, dialect, shop, fresh);
  await sql.run("UPDATE shop SET last_seq = ? WHERE id = ?", [last + fresh.length + moved, shop]);
  const uses = fresh.flatMap(({ id, blobs }) => blobs.map((hash) => [shop, hash, id] as const));
  if (uses.length > 0) {
    await sql.insertMany(
      "blob_use",
      [
        ["shop", "text"],
        ["hash", "text"],
        ["record", "text"],
      ],
      uses,
    );
  }
}

async function bikesOf(
  sql: Sql,
  listed: string,
  shop: string,
  ids: readonly string[],
): Promise<Map<string, string>> {
  if (ids.length === 0) return new Map();
  const rows = await sql.all<{ id: string; bike: string }>(
    `SELECT id, bike FROM record WHERE shop = ? AND bike IS NOT NULL AND id IN ${listed}`,
    [shop, JSON.stringify(ids)],
  );
  return new Map(rows.map(({ id, bike }) => [id, bike]));
}

/**
 * A strike that came before the record it strikes did not know the bike, so nobody who sees that bike alone
 * was told. It gets the bike and a new number now, behind every cursor. Gives how many.
 */
async function announceStrikes(
  sql: Sql,
  listed: string,
  shop: string,
  last: number,
  mark: string,
  fresh: readonly Arriving[],
): Promise<number> {
  const bikes = new Map(fresh.flatMap(({ id, bike }) => (bike === null ? [] : [[id, bike] as const])));
  if (bikes.size === 0) return 0;
  const waiting = await sql.all<{ id: string; target: string }>(
    `SELECT id, target FROM record WHERE shop = ? AND bike IS NULL AND target IN ${listed}`,
    [shop, JSON.stringify([...bikes.keys()])],
  );
  for (const [i, { id, target }] of waiting.entries()) {
    await sql.run("UPDATE record SET bike = ?, seq = ?, mark = ? WHERE shop = ? AND id = ?", [
      bikes.get(target)!,
      last + 1 + i,
      mark,
      shop,
      id,
    ]);
  }
  return waiting.length;
}

/** The log behind a cursor (empty: from its beginning), as far as the scope sees it. */
export async function readPage(
  database: Database,
  shop: string,
  scope: Scope,
  cursorText: string,
  most = PAGE_RECORDS,
): Promise<Page> {
  const epoch = await epochOf(database);
  const seen = scopeMark(scope);
  const given = cursorText === "" ? null : readCursor(cursorText);
  const restart = cursorText === "" ? null : await whyRestart(database, shop, given, epoch, seen);
  const from = given === null || restart !== null ? { seq: 0, mark: "" } : given;
  const { sql: condition, parameters } = scopeCondition(scope, database.dialect.listed);
  const rows = await database.all<{ seq: number; mark: string; line: string }>(
    `SELECT seq, mark, line FROM record WHERE shop = ? AND seq > ? ${condition} ORDER BY seq LIMIT ?`,
    [shop, from.seq, ...parameters, most + 1],
  );
  let characters = 0;
  let count = 0;
  while (count < Math.min(rows.length, most) && (count === 0 || characters <= PAGE_CHARACTERS)) {
    characters += rows[count++]!.line.length;
  }
  const end = count === 0 ? from : rows[count - 1]!;
  return {
    restart,
    lines: rows.slice(0, count).map(({ line }) => line),
    cursor: writeCursor({ epoch, scope: seen, seq: end.seq, mark: end.mark }),
    more: rows.length > count,
  };
}

/**
 * A cursor names the arrival it ended at. When that one does not stand at that number any more, a backup was
 * put back under it, and what came since must not be skipped, also when the same records were sent again.
 */
async function whyRestart(
  database: Database,
  shop: string,
  given: Cursor | null,
  epoch: string,
  scope: string,
): Promise<Page["restart"]> {
  if (given === null || given.epoch !== epoch) return "epoch";
  if (given.scope !== scope) return "scope";
  if (given.seq === 0) return null;
  const rows = await database.all<{ mark: string }>("SELECT mark FROM record WHERE shop = ? AND seq = ?", [
    shop,
    given.seq,
  ]);
  return rows[0]?.mark === given.mark ? null : "epoch";
}
