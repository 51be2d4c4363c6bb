import type { Setting, StoredRecord } from "./tables.ts";

/** What lies under a key, and how to put it there; a put resolves once it is on the disk. */
export interface Shelf<Value> {
  readonly get: (key: string) => Promise<Value | undefined>;
  readonly put: (value: Value) => Promise<void>;
  readonly delete: (key: string) => Promise<void>;
}

/** This device's own settings, and what is half done on it. */
export interface SettingShelf extends Shelf<Setting> {
  readonly startingWith: (prefix: string) => Promise<readonly Setting[]>;
}

/** The records of the log: added, and changed only to take a person's words out of them. */
export interface RecordShelf {
  readonly all: () => Promise<readonly StoredRecord[]>;
  readonly some: (ids: readonly string[]) => Promise<readonly StoredRecord[]>;
  /** Adds those whose id is not there yet, together or not at all. */
  readonly add: (records: readonly StoredRecord[]) => Promise<void>;
  readonly count: () => Promise<number>;
  readonly clear: () => Promise<void>;
  /** Writes these over those with their ids, together or not at all; what is not there is not added. */
  readonly replace: (records: readonly StoredRecord[]) => Promise<void>;
  /** Takes these off the device, together or not at all. */
  readonly remove: (ids: readonly string[]) => Promise<void>;
}

/** What came of records from the shop's server. */
export interface Arrived {
  readonly added: readonly StoredRecord[];
  /** Records of this device that another one with the same id has taken the place of, as they were. */
  readonly replaced: readonly StoredRecord[];
  /** Those of them that stay on this device under another id. */
  readonly moved: readonly { readonly id: string; readonly to: string }[];
}

/** Which records the shop's server has; kept in step with the records in the same transactions. */
export interface SyncShelf {
  readonly unsent: (most: number) => Promise<readonly StoredRecord[]>;
  readonly unsentCount: () => Promise<number>;
  readonly markSent: (ids: readonly string[]) => Promise<void>;
  readonly markAllUnsent: () => Promise<void>;
  /**
   * Takes in what the server has, together with a setting that says how far it was read.
   * @param anew what is kept of a record here that another one takes the place of, and is still to be sent; null: nothing
   */
  readonly arrive: (
    records: readonly StoredRecord[],
    same: (a: string, b: string) => boolean,
    anew: (here: string, theirs: string) => StoredRecord | null,
    progress: Setting,
  ) => Promise<Arrived>;
}
