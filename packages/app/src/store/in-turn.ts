/** How long work waits for its turn: a page that the system has put to sleep may hold it, ms. */
const PATIENCE = 10_000;

/** The last work of each name in this page, for browsers that keep no turns between pages. */
const lasts = new Map<string, Promise<unknown>>();

/**
 * Does work that may not run beside other work of its name, in this page or in others: after what came before. Where that
 * does not end, it is done all the same.
 */
export async function inTurn<T>(name: string, work: () => Promise<T>): Promise<T> {
  const locks = globalThis.navigator?.locks;
  if (locks === undefined) {
    const mine = (lasts.get(name) ?? Promise.resolve()).then(work, work);
    lasts.set(name, mine);
    return mine;
  }
  let begun = false;
  try {
    return await locks.request(name, { signal: AbortSignal.timeout(PATIENCE) }, () => {
      begun = true;
      return work();
    });
  } catch (error) {
    if (begun) throw error;
    return work();
  }
}
