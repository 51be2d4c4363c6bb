import { type Ask, Refused } from "./remote.ts";
import type { BlobRemote, UploadProgress } from "./send-blobs.ts";

/** A slow link may need this long for one picture, milliseconds. */
const PATIENCE = 180_000;

/** An answer's refusals that are no trouble of the connection, by their status. */
async function unless<T>(work: Promise<T>, ...known: readonly number[]): Promise<T | number> {
  try {
    return await work;
  } catch (error) {
    if (error instanceof Refused && known.includes(error.status)) return error.status;
    throw error;
  }
}

/** The shop's pictures and clips at a server. */
export const blobRemoteBy = (ask: Ask): BlobRemote => ({
  wanted: async () => {
    const answer = await unless(ask("GET", "blobs"), 404);
    return typeof answer === "number" ? [] : ((await answer.json()) as { wanted: string[] }).wanted;
  },
  progress: async (hash) => {
    const answer = await unless(ask("GET", `blobs/${hash}/upload`), 404);
    return typeof answer === "number" ? null : ((await answer.json()) as UploadProgress);
  },
  piece: async (hash, offset, size, piece) => {
    const headers = {
      "upload-offset": String(offset),
      "upload-length": String(size),
      "content-type": piece.type,
    };
    const sent = ask("PUT", `blobs/${hash}/upload`, piece, PATIENCE, headers);
    const answer = await unless(sent, 404, 409, 413, 415, 422, 507);
    if (typeof answer !== "number")
      return { said: "taken", progress: (await answer.json()) as UploadProgress };
    if (answer === 507) return { said: "no-room" };
    return { said: answer === 404 || answer === 409 ? "elsewhere" : "never" };
  },
  get: async (hash) => {
    const answer = await unless(ask("GET", `blobs/${hash}`, undefined, PATIENCE), 404);
    return typeof answer === "number" ? null : answer.blob();
  },
});
