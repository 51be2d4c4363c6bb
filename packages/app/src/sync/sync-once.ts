import type { Json, JsonObject } from "@jetwright/records";
import { digest, isErased, writeRecord } from "@jetwright/records";
import { SYNC_CURSOR } from "../store/database.ts";
import type { Arrived, SyncShelf } from "../store/shelves.ts";
import type { Setting, StoredRecord } from "../store/tables.ts";

/** A record that the server did not take as it is, with its reason. */
export interface NotTaken {
  readonly id: string;
  readonly reason: string;
  readonly detail: string;
}

/** Reason of this device's own: the line is no JSON any more, and is not sent. */
export const DAMAGED = "damaged-here";
/** Reason of this device's own: the shop had another record under this id; this one is sent under the one in `detail`. */
export const MOVED = "moved-here";

/** What the server gives behind a cursor. */
export interface PulledPage {
  readonly restart: "epoch" | "scope" | null;
  readonly cursor: string;
  readonly more: boolean;
  readonly lines: readonly string[];
}

/** The server, as a device speaks with it. A lost connection rejects; nothing is known of it then. */
export interface Remote {
  readonly push: (lines: readonly string[]) => Promise<readonly (NotTaken & { readonly line: number })[]>;
  readonly pull: (cursor: string) => Promise<PulledPage>;
}

/** This device. */
export interface Local {
  readonly sync: SyncShelf;
  readonly settings: { readonly get: (key: string) => Promise<Setting | undefined> };
  readonly arrived: (what: Arrived) => Promise<void>;
  /** The shop has other data than we knew, or gives us other rights: what else is known of it is not any more. */
  readonly begunAnew: () => Promise<void>;
  /** Records that stay on this device alone, or go to the shop under another id. */
  readonly setAside: (records: readonly NotTaken[]) => Promise<void>;
}

const PUSH_RECORDS = 500;
/** Sent before it is looked what has come back. */
const ROUND_RECORDS = 4000;
const PUSH_CHARACTERS = 1_000_000;

/** A line as it is sent; null where it is damaged and no JSON any more. It may have breaks of its own: sent it is one line. */
function sendable(line: string): string | null {
  try {
    return writeRecord(JSON.parse(line));
  } catch {
    return null;
  }
}

/** Whether two lines are the same record, however their keys were ordered. A damaged one is never. */
function sameRecord(a: string, b: string): boolean {
  if (a === b) return true;
  const [one, other] = [sendable(a), sendable(b)];
  return one !== null && one === other;
}

/**
 * A record of this device under an id of its own, as the shop has another under the old one; the same on every device.
 * Null for one that is damaged, and where the words of either were erased: they do not come back under another id.
 */
export function movedRecord(here: string, theirs: string): StoredRecord | null {
  const line = sendable(here);
  if (line === null) return null;
  const [mine, other] = [JSON.parse(line) as JsonObject, JSON.parse(theirs) as JsonObject];
  if (isErased(mine) || isErased(other)) return null;
  const id = `${String(mine.id).slice(0, 48)}-${digest(line).toString(36)}`;
  return { id, line: writeRecord({ ...mine, id }) };
}

/**
 * Brings this device and the shop's log together: takes in what is new there, sends what is new here. May be
 * cut off anywhere and begun again: a record counts as sent when it has come back, and the cursor that follows
 * it is on this disk with it. A server's word alone is not enough: a backup put back there may take it back.
 */
export async function syncOnce(local: Local, remote: Remote): Promise<void> {
  const { unsentCount } = local.sync;
  await pullAll(local, remote);
  let before = Number.POSITIVE_INFINITY;
  // What was sent comes back and is waiting no more; when nothing does, the next round may try again.
  for (let left = await unsentCount(); left > 0 && left < before; left = await unsentCount()) {
    before = left;
    const sent = new Set<string>();
    while (sent.size < ROUND_RECORDS && (await pushSome(local, remote, sent))) await Promise.resolve();
    await pullAll(local, remote);
  }
}

async function pullAll(
  { sync, settings, arrived, begunAnew, setAside }: Local,
  { pull }: Remote,
): Promise<void> {
  let cursor = ((await settings.get(SYNC_CURSOR))?.value as string | undefined) ?? "";
  for (let more = true; more; ) {
    const page = await pull(cursor);
    // Other data than we knew, or other rights: what the server has of ours is not known any more.
    if (page.restart !== null) await Promise.all([sync.markAllUnsent(), begunAnew()]);
    const records = page.lines.map((line): StoredRecord => ({ id: idOf(line), line }));
    const progress = { key: SYNC_CURSOR, value: page.cursor };
    const came = await sync.arrive(records, sameRecord, movedRecord, progress);
    await setAside(came.moved.map(({ id, to }) => ({ id, reason: MOVED, detail: to })));
    await arrived(came);
    // A cursor that stands still with more behind it would never end.
    more = page.more && page.cursor !== cursor;
    cursor = page.cursor;
  }
}

const idOf = (line: string): string => String((JSON.parse(line) as { readonly id: Json }).id);

/** Sends one batch of what was not sent in this round; false when there was none. */
async function pushSome({ sync, setAside }: Local, { push }: Remote, sent: Set<string>): Promise<boolean> {
  const waiting = await sync.unsent(sent.size + PUSH_RECORDS);
  let characters = 0;
  const batch = waiting
    .filter(({ id }) => !sent.has(id))
    .slice(0, PUSH_RECORDS)
    .filter(({ line }, i) => {
      characters += line.length;
      return i === 0 || characters <= PUSH_CHARACTERS;
    });
  if (batch.length === 0) return false;
  for (const { id } of batch) sent.add(id);
  const written = batch.map(({ id, line }) => ({ id, line: sendable(line) }));
  const whole = written.filter((record): record is StoredRecord => record.line !== null);
  const refused = whole.length === 0 ? [] : await push(whole.map(({ line }) => line));
  const notTaken = [
    ...written.filter(({ line }) => line === null).map(({ id }) => ({ id, reason: DAMAGED, detail: "" })),
    ...refused.map(({ line, reason, detail }) => ({ id: whole[line - 1]!.id, reason, detail })),
  ];
  await setAside(notTaken);
  // It will not come back, or another one will in its place: asking again changes nothing.
  await sync.markSent(notTaken.map(({ id }) => id));
  return true;
}
