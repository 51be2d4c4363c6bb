import { accept, type Outcome, refuse } from "@jetwright/core";
import { blobType } from "../../shop/blob-types.ts";
import { blobOf, isNamed, piecesOf } from "../../shop/blobs.ts";
import type { Caller } from "../../shop/devices.ts";
import { addPiece, progressOf } from "../../shop/uploads.ts";
import { wantedBlobs } from "../../shop/wanted-blobs.ts";
import { json, refusal, refused } from "../answers.ts";
import { readBytes } from "../read-body.ts";
import type { Ctx, Handler, Services } from "../services.ts";

/** Most bytes of one piece. */
export const PIECE_BYTES = 1_000_000;

const FINGERPRINT = /^[0-9a-f]{64}$/;
const WHOLE_NUMBER = /^(0|[1-9]\d{0,8})$/;

const noSuch = (): Response =>
  refused(404, "no-such-picture", "The shop has no picture or clip of this fingerprint that you may see.");

/** The fingerprint in the address, when a record that the caller sees names it. */
async function named(context: Ctx, caller: Caller, { database }: Services): Promise<string | null> {
  const hash = context.req.param("hash") ?? "";
  if (!FINGERPRINT.test(hash)) return null;
  return (await isNamed(database, caller.shop, caller.scope, hash)) ? hash : null;
}

/** A picture or clip as it was sent, to be kept and not to be run. HEAD says whether it is there. */
export const giveBlob: Handler = async (context, caller, services) => {
  const hash = await named(context, caller, services);
  const blob = hash === null ? null : await blobOf(services.database, caller.shop, hash);
  if (blob === null) return noSuch();
  const pieces = piecesOf(services.database, blob.upload, blob.size);
  let left = blob.size;
  const body = new ReadableStream<Uint8Array>({
    pull: async (controller) => {
      const { done, value } = await pieces.next();
      if (!done) {
        left -= value.length;
        controller.enqueue(value);
      } else if (left === 0) controller.close();
      // Taken away meanwhile: the connection ends, so that nobody waits for the rest.
      else controller.error(new Error("The picture was taken away while it was read"));
    },
  });
  const headers = {
    "content-type": blob.type,
    "content-length": String(blob.size),
    "content-disposition": "attachment",
    "cache-control": "no-store",
  };
  return new Response(context.req.method === "HEAD" ? null : body, { headers });
};

/** What a device that has it is asked to send, also where it did so once. */
export const askWanted: Handler = async (_context, { shop, scope }, { database }) =>
  json({ wanted: await wantedBlobs(database, shop, scope) });

/** How far this device has come with sending it. */
export const askUpload: Handler = async (context, caller, services) => {
  const hash = await named(context, caller, services);
  if (hash === null) return noSuch();
  return json(await progressOf(services.database, { shop: caller.shop, device: caller.device, hash }));
};

/** Takes a piece: `Upload-Offset` says where it goes on, `Upload-Length` how long the whole is. */
export const takePiece: Handler = async (context, caller, services) => {
  const { shop, device } = caller;
  const hash = await named(context, caller, services);
  if (hash === null) return noSuch();
  const head = readHead(context.req.raw.headers);
  if (!head.ok) return refused(HEAD_STATUS[head.reason], head.reason, head.detail);
  const bytes = await readBytes(context.req.raw, PIECE_BYTES);
  if (!bytes.ok) return refusal(bytes);
  const { offset, size, type } = head.value;
  const wanted = { shop, device, hash, size, type };
  const taken = await addPiece(
    services.database,
    wanted,
    offset,
    bytes.value,
    services.now(),
    services.shopBytes,
  );
  if (!taken.ok) return refusal(taken);
  // A page that misses it looks again.
  if (taken.value.whole) services.live.news(shop);
  services.metrics.add("jetwright_blob_bytes", bytes.value.length);
  return json(taken.value);
};

export interface UploadHead {
  readonly offset: number;
  readonly size: number;
  readonly type: string;
}

const HEAD_STATUS = { "bad-offset": 400, "too-large": 413, "type-not-kept": 415 } as const;

/** Reads what the headers say of a piece. */
export function readHead(headers: Headers): Outcome<UploadHead, keyof typeof HEAD_STATUS> {
  const offset = wholeNumber(headers.get("upload-offset"));
  const size = wholeNumber(headers.get("upload-length"));
  if (offset === null || size === null || size === 0 || offset > size) {
    const detail =
      "Upload-Offset and Upload-Length are whole numbers of bytes, the length at least 1 and no less than the offset.";
    return refuse("bad-offset", detail);
  }
  const kept = blobType(headers.get("content-type") ?? "");
  if (kept === null) {
    return refuse("type-not-kept", "Pictures are kept as JPEG, PNG or WebP, sound as WAV, WebM, Ogg or MP4.");
  }
  if (size > kept.limit) return refuse("too-large", `One of these may have at most ${kept.limit / 1e6} MB.`);
  return accept({ offset, size, type: kept.type });
}

const wholeNumber = (text: string | null): number | null =>
  text !== null && WHOLE_NUMBER.test(text) ? Number(text) : null;
