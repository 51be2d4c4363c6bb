import type { Shop } from "../store/shop.ts";

/** Deletes the pictures of this device that nothing has named for a day; gives how many. */
export async function sweepPhotos({ database, engine }: Shop, now = Date.now()): Promise<number> {
  if ((await database.photos.held()).length === 0) return 0;
  return database.photos.sweep(await engine.ask("photosNamed", undefined), now);
}
