import type { DBSchema } from "idb";

/** One record of the log, as written: one line of JSON. */
export interface StoredRecord {
  readonly id: string;
  readonly line: string;
}

/** A choice of this device's own, never part of the log. */
export interface Setting {
  readonly key: string;
  readonly value: unknown;
}

/** A picture kept on this device, under the hash the log names. */
export interface StoredPhoto {
  readonly hash: string;
  readonly blob: Blob;
}

/** The tables of this browser's own database. */
export interface Tables extends DBSchema {
  records: { key: string; value: StoredRecord };
  /** Ids of records that the shop's server has not said it has. */
  unsent: { key: string; value: string };
  settings: { key: string; value: Setting };
  photos: { key: string; value: StoredPhoto };
}
