import { type Entry, Erasures, isErasure, readBareRecord, readLog, writeRecord } from "@jetwright/records";
import type { Dialect, Sql } from "../database/database.ts";
import { type Arriving, ERASING, readArriving } from "./arriving.ts";

/** Whether a record removes a person's data: only an owner may write one. */
export const isErasing = ({ kind }: Arriving): boolean => kind === ERASING;

const erasuresOf = (lines: readonly string[]) => readLog(lines).entries.filter(isErasure);

const erasuresIn = (records: readonly Arriving[]) =>
  erasuresOf(records.filter(isErasing).map(({ line }) => line));

/** The record as its line says it; a line that was kept can be read. */
function entryOf(line: string): Entry {
  const read = readBareRecord(line);
  if (!read.ok) throw new RangeError(`A record of the log cannot be read: ${read.detail}`);
  return read.value;
}

/** The record without its words, where an erasure covers it; null where none does. */
function emptied(line: string, erasures: Erasures): Arriving | null {
  const entry = entryOf(line);
  const kept = erasures.apply(entry);
  if (kept === entry) return null;
  const read = readArriving(writeRecord(kept.source));
  if (!read.ok) throw new RangeError(`An emptied record cannot be read: ${read.detail}`);
  return read.value;
}

/** What arrives, without the words that the shop's erasures, or those arriving with it, cover. */
export async function emptyArriving(
  sql: Sql,
  shop: string,
  records: readonly Arriving[],
  standing: number,
): Promise<readonly Arriving[]> {
  const arriving = records.filter(isErasing).map(({ line }) => line);
  if (standing + arriving.length === 0) return records;
  const rows = await sql.all<{ line: string }>(`SELECT line FROM record WHERE shop = ? AND target = ?`, [
    shop,
    ERASING,
  ]);
  const erasures = new Erasures(erasuresOf([...rows.map(({ line }) => line), ...arriving]));
  return erasures.none ? records : records.map((record) => emptied(record.line, erasures) ?? record);
}

/**
 * Empties what stands in the log already and fresh erasures cover: each gets a new number behind every cursor, so that
 * all devices read it again. Gives how many.
 */
export async function emptyStanding(
  sql: Sql,
  { listed }: Dialect,
  shop: string,
  last: number,
  mark: string,
  fresh: readonly Arriving[],
): Promise<number> {
  const bodies = erasuresIn(fresh);
  if (bodies.length === 0) return 0;
  const rows = await sql.all<{ line: string }>(
    `SELECT line FROM record WHERE shop = ?
       AND (id IN ${listed} OR bike IN ${listed} OR kind IN ('customer-described', 'order-opened'))`,
    [
      shop,
      JSON.stringify(bodies.flatMap(({ body }) => body.records ?? [])),
      JSON.stringify(bodies.flatMap(({ body }) => body.bikes ?? [])),
    ],
  );
  const erasures = new Erasures(bodies);
  let moved = 0;
  for (const { line } of rows) {
    const empty = emptied(line, erasures);
    if (empty === null) continue;
    moved++;
    await sql.run("UPDATE record SET line = ?, hash = ?, seq = ?, mark = ? WHERE shop = ? AND id = ?", [
      empty.line,
      empty.hash,
      last + moved,
      mark,
      shop,
      empty.id,
    ]);
    await forgetBlobs(sql, shop, empty);
  }
  return moved;
}

/** Takes the names that fresh erasures cover out of the shop's list of people, and those of the people's devices. */
export async function forgetNames(
  sql: Sql,
  { listed }: Dialect,
  shop: string,
  fresh: readonly Arriving[],
): Promise<void> {
  const people = erasuresIn(fresh).flatMap(({ body }) => body.people ?? []);
  if (people.length === 0) return;
  const covered = [shop, JSON.stringify(people)];
  await sql.run(`UPDATE person SET name = '' WHERE shop = ? AND id IN ${listed}`, covered);
  await sql.run(`UPDATE device SET name = '' WHERE shop = ? AND person IN ${listed}`, covered);
}

/** Takes away the clips that a record named and does not any more, where no other record names them. */
async function forgetBlobs(sql: Sql, shop: string, { id, blobs }: Arriving): Promise<void> {
  const used = await sql.all<{ hash: string }>("SELECT hash FROM blob_use WHERE shop = ? AND record = ?", [
    shop,
    id,
  ]);
  for (const { hash } of used.filter((one) => !blobs.includes(one.hash))) {
    await sql.run("DELETE FROM blob_use WHERE shop = ? AND record = ? AND hash = ?", [shop, id, hash]);
    const others = await sql.all("SELECT 1 AS one FROM blob_use WHERE shop = ? AND hash = ? LIMIT 1", [
      shop,
      hash,
    ]);
    if (others.length > 0) continue;
    await sql.run("DELETE FROM piece WHERE upload IN (SELECT id FROM upload WHERE shop = ? AND hash = ?)", [
      shop,
      hash,
    ]);
    await sql.run("DELETE FROM piece WHERE upload IN (SELECT upload FROM blob WHERE shop = ? AND hash = ?)", [
      shop,
      hash,
    ]);
    await sql.run("DELETE FROM upload WHERE shop = ? AND hash = ?", [shop, hash]);
    await sql.run("DELETE FROM blob WHERE shop = ? AND hash = ?", [shop, hash]);
  }
}

/** Whether exactly this record stands in the shop's log already. */
export async function stands(sql: Sql, shop: string, { id, hash }: Arriving): Promise<boolean> {
  const rows = await sql.all("SELECT 1 AS one FROM record WHERE shop = ? AND id = ? AND hash = ?", [
    shop,
    id,
    hash,
  ]);
  return rows.length > 0;
}
