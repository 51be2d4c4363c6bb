import { watched } from "../store/value.ts";
import type { NotTaken } from "./sync-once.ts";

/** Where this device stands with its shop. */
export interface SyncState {
  readonly connection: "together" | "at-work" | "away" | "shut-out";
  /** Records not yet at the shop. */
  readonly waiting: number;
  /** Pictures and clips not yet at the shop. */
  readonly pictures: number;
  /** Pictures and clips that the shop will never take. */
  readonly picturesKept: number;
  /** The shop has no room for more of them now. */
  readonly noRoom: boolean;
  /** Records that the shop did not take. */
  readonly notTaken: readonly NotTaken[];
}

export const syncState = watched<SyncState>({
  connection: "away",
  waiting: 0,
  pictures: 0,
  picturesKept: 0,
  noRoom: false,
  notTaken: [],
});
