import type { PhotoShelf } from "../store/photo-shelf.ts";

/** How far the shop has a picture or clip. */
export interface UploadProgress {
  readonly arrived: number;
  readonly whole: boolean;
}

/** What the shop said of a piece. */
export type PieceAnswer =
  | { readonly said: "taken"; readonly progress: UploadProgress }
  /** Another place is the one to go on from. */
  | { readonly said: "elsewhere" }
  /** The shop or its disk is full now. */
  | { readonly said: "no-room" }
  /** It will never be taken: too large, of a type that is not kept, or not what its fingerprint says. */
  | { readonly said: "never" };

/** The shop's pictures and clips. A lost connection rejects. */
export interface BlobRemote {
  /** Those that it has not got and would have, of this device or another. */
  readonly wanted: () => Promise<readonly string[]>;
  /** Null: no record that the shop has and we may see names it. */
  readonly progress: (hash: string) => Promise<UploadProgress | null>;
  readonly piece: (hash: string, offset: number, size: number, piece: Blob) => Promise<PieceAnswer>;
  /** Null: the shop has not got it. */
  readonly get: (hash: string) => Promise<Blob | null>;
}

/** What this device knows to be settled with the shop: there, or refused for good. */
export interface Settled {
  readonly there: readonly string[];
  readonly never: readonly string[];
}

export interface BlobLocal {
  readonly photos: Pick<PhotoShelf, "held" | "get">;
  readonly settled: () => Promise<Settled>;
  readonly settle: (settled: Settled) => Promise<void>;
  /** How many are still to be sent. */
  readonly left: (count: number) => void;
  /** How many the shop will never take, and whether it has no room for others now. */
  readonly kept: (never: number, noRoom: boolean) => void;
  /** Something more urgent waits: the sending ends after the piece that is on its way. */
  readonly stop: () => boolean;
}

/** Small, so that a slow link loses little and records need not wait for long. */
const PIECE = 128_000;
/** Times that the shop may name another place to go on from. */
const TRIES = 3;

/**
 * Sends the pictures and clips of this device that the shop has not got, one after the other, each from where it was
 * cut off. What no record names yet waits for another round. May be cut off anywhere and begun again.
 */
export async function sendBlobs(local: BlobLocal, remote: BlobRemote): Promise<void> {
  const { there: sent, never } = await local.settled();
  // Deleted at the shop after its record was struck, and named again since: it is sent once more.
  const wanted = new Set(sent.length === 0 ? [] : await remote.wanted());
  const there = sent.filter((hash) => !wanted.has(hash));
  const known = new Set([...there, ...never]);
  const held = await local.photos.held();
  const waiting = held.filter(({ hash }) => !known.has(hash));
  // What is not on this device any more need not be remembered.
  const here = new Set(held.map(({ hash }) => hash));
  let settled: Settled = {
    there: there.filter((hash) => here.has(hash)),
    never: never.filter((hash) => here.has(hash)),
  };
  let left = waiting.length;
  let noRoom = false;
  local.left(left);
  for (const { hash } of waiting) {
    if (local.stop()) return;
    const end = await sendOne(hash, local, remote, !noRoom);
    noRoom ||= end === "no-room";
    if (end === "later" || end === "no-room") continue;
    settled = { ...settled, [end]: [...settled[end], hash] };
    await local.settle(settled);
    local.left(--left);
  }
  local.kept(settled.never.length, noRoom);
}

async function sendOne(
  hash: string,
  local: BlobLocal,
  remote: BlobRemote,
  mayBegin: boolean,
): Promise<"there" | "never" | "no-room" | "later"> {
  let progress = await remote.progress(hash);
  if (progress === null) return "later";
  if (progress.whole) return "there";
  if (progress.arrived === 0 && !mayBegin) return "later";
  const blob = await local.photos.get(hash);
  if (blob === undefined) return "later";
  for (let tries = TRIES; tries > 0; ) {
    if (local.stop()) return "later";
    const { arrived } = progress;
    // What arrived may be of another size than ours: then it begins anew.
    const from = arrived < blob.size ? arrived : 0;
    const answer = await remote.piece(hash, from, blob.size, blob.slice(from, from + PIECE, blob.type));
    if (answer.said === "never" || answer.said === "no-room") return answer.said;
    if (answer.said === "taken") ({ progress } = answer);
    else {
      tries--;
      progress = (await remote.progress(hash)) ?? progress;
    }
    if (progress.whole) return "there";
  }
  return "later";
}
