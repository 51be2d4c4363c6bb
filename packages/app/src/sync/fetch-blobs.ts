import type { PhotoShelf } from "../store/photo-shelf.ts";
import type { BlobRemote } from "./send-blobs.ts";

/** What became of a picture that was asked for: on this device now; not at the shop; the shop cannot be reached. */
export type Fetched = "here" | "not-there" | "away";

/** Gets pictures and clips from the shop when a screen asks for them, one at a time, each once however many ask. */
export function blobFetcher(
  photos: Pick<PhotoShelf, "put">,
  remote: Pick<BlobRemote, "get">,
): (hash: string) => Promise<Fetched> {
  const asked = new Map<string, Promise<Fetched>>();
  let last: Promise<unknown> = Promise.resolve();

  async function get(hash: string): Promise<Fetched> {
    let blob: Blob | null;
    try {
      blob = await remote.get(hash);
    } catch {
      return "away";
    }
    if (blob === null) return "not-there";
    // The shelf reckons the name anew, so what was damaged on its way is not taken for it.
    return (await photos.put(blob)) === hash ? "here" : "not-there";
  }

  return (hash) => {
    const known = asked.get(hash);
    if (known !== undefined) return known;
    const fetched = last
      .then(() => get(hash))
      // The device may have no room for it, or no way to reckon fingerprints.
      .catch((): Fetched => "not-there")
      .finally(() => asked.delete(hash));
    last = fetched;
    asked.set(hash, fetched);
    return fetched;
  };
}
