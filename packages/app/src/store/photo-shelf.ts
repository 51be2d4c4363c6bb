import type { IDBPDatabase } from "idb";
import type { Tables } from "./tables.ts";
import { type Unnamed, unnamedPhotos } from "./unnamed-photos.ts";

/** What the log names, and of how many records that is known. */
export interface Named {
  readonly hashes: readonly string[];
  readonly records: number;
}

/** Pictures of this device, each under the SHA-256 of its bytes, 64 hex digits: the name the log has for it. */
export interface PhotoShelf {
  readonly has: (hash: string) => Promise<boolean>;
  readonly get: (hash: string) => Promise<Blob | undefined>;
  /** Keeps a picture; gives its hash once it is on the disk. Rejects where `canHash` is false. */
  readonly put: (blob: Blob) => Promise<string>;
  /** Every picture here, with its bytes. */
  readonly held: () => Promise<readonly { readonly hash: string; readonly bytes: number }[]>;
  /**
   * Deletes the pictures that for a day neither the log nor work half done has named; gives how many. None while the
   * log holds other records than those that `named` was made of.
   */
  readonly sweep: (named: Named, now: number) => Promise<number>;
}

/** Browsers give no fingerprints on pages without a protected connection. */
export const canHash = (): boolean => globalThis.crypto?.subtle !== undefined;

const UNNAMED = "photos-unnamed";

async function sha256(blob: Blob): Promise<string> {
  const digest = await crypto.subtle.digest("SHA-256", await blob.arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

export function photoShelf(database: IDBPDatabase<Tables>): PhotoShelf {
  const writing = () =>
    database.transaction(["records", "settings", "photos"], "readwrite", { durability: "strict" });
  return {
    has: async (hash) => (await database.getKey("photos", hash)) !== undefined,
    get: async (hash) => (await database.get("photos", hash))?.blob,
    put: async (blob) => {
      const hash = await sha256(blob);
      const transaction = writing();
      const settings = transaction.objectStore("settings");
      // Let go once and kept again: its day begins anew.
      const { [hash]: _, ...others } = unnamedIn(await settings.get(UNNAMED));
      await Promise.all([
        transaction.objectStore("photos").put({ hash, blob }),
        settings.put({ key: UNNAMED, value: others }),
        transaction.done,
      ]);
      return hash;
    },
    held: async () => {
      const held: { hash: string; bytes: number }[] = [];
      let place = await database.transaction("photos").store.openCursor();
      for (; place !== null; place = await place.continue()) {
        held.push({ hash: place.value.hash, bytes: place.value.blob.size });
      }
      return held;
    },
    sweep: async (named, now) => {
      const transaction = writing();
      const photos = transaction.objectStore("photos");
      const settings = transaction.objectStore("settings");
      const [records, here, kept, unnamed] = await Promise.all([
        transaction.objectStore("records").count(),
        photos.getAllKeys(),
        settings.getAll(),
        settings.get(UNNAMED),
      ]);
      const halfDone = JSON.stringify(kept.filter(({ key }) => key !== UNNAMED));
      const byLog = new Set(named.hashes);
      const isNamed = (hash: string) => byLog.has(hash) || halfDone.includes(hash);
      const { due, waiting } =
        records === named.records
          ? unnamedPhotos(here, isNamed, unnamedIn(unnamed), now)
          : { due: [], waiting: unnamedIn(unnamed) };
      await Promise.all([
        ...due.map((hash) => photos.delete(hash)),
        settings.put({ key: UNNAMED, value: waiting }),
        transaction.done,
      ]);
      return due.length;
    },
  };
}

const unnamedIn = (kept: { readonly value: unknown } | undefined): Unnamed =>
  (kept?.value as Unnamed | undefined) ?? {};
