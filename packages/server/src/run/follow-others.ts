import type { Services } from "../http/services.ts";

/**
 * Looks, each time it is called, for what other processes on the same database took and shut out since, and tells the
 * pages that are open here.
 */
export function lookAtOthers({ database, live }: Pick<Services, "database" | "live">): () => Promise<void> {
  const seen = new Map<string, string>();
  return async () => {
    const { shops, devices } = live;
    // A picture that is whole now gives no record a number, and is news all the same.
    const rows = await database.all<{ id: string; last_seq: number; blobs: number; newest: number }>(
      `SELECT id, last_seq, (SELECT count(*) FROM blob WHERE blob.shop = shop.id) AS blobs,
           (SELECT coalesce(max(created_at), 0) FROM blob WHERE blob.shop = shop.id) AS newest
         FROM shop WHERE id IN ${database.dialect.listed}`,
      [JSON.stringify(shops)],
    );
    for (const { id, last_seq, blobs, newest } of rows) {
      const state = `${last_seq} ${blobs} ${newest}`;
      // A shop met for the first time may have news since its page read the log.
      if (seen.get(id) !== state) live.news(id);
      seen.set(id, state);
    }
    const out = await database.all<{ id: string }>(
      `SELECT id FROM device WHERE revoked_at IS NOT NULL AND id IN ${database.dialect.listed}`,
      [JSON.stringify(devices)],
    );
    const gone = new Set(out.map(({ id }) => id));
    if (gone.size > 0) live.end(({ device }) => gone.has(device));
  };
}

/** The same for a timer: one look at a time, none while no page is open. */
export function followOthers(services: Services): () => void {
  const look = lookAtOthers(services);
  let looking = false;
  return () => {
    if (looking || services.live.size === 0) return;
    looking = true;
    look()
      .catch((error: unknown) => services.log({ what: "database", why: String(error) }))
      .finally(() => {
        looking = false;
      });
  };
}
