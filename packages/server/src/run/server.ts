import type { Hono } from "hono";
import type { Database } from "../database/database.ts";
import { migrate } from "../database/migrate.ts";
import { createApp } from "../http/app.ts";
import { LiveStreams } from "../http/live.ts";
import { Metrics } from "../http/metrics.ts";
import { type Allowance, RateLimits, USUAL_ALLOWANCES } from "../http/rate-limit.ts";
import type { Services } from "../http/services.ts";
import { StaticFiles } from "../http/static-files.ts";
import { serverIdOf } from "../shop/epoch.ts";
import { setupCode, shopCount } from "../shop/pairing.ts";
import { PushQueue } from "../shop/push-queue.ts";
import { sweepRemoved } from "../shop/removed-blobs.ts";
import { SHOP_BYTES } from "../shop/uploads.ts";
import { followOthers } from "./follow-others.ts";
import { type Door, type Listener, listen } from "./listener.ts";

export interface ServerOptions {
  readonly database: Database;
  readonly port: number;
  readonly host: string;
  /** Folder of the built app; null: only the log is served. */
  readonly appFolder: string | null;
  /** A second port, with https. */
  readonly secure?: Required<Pick<Door, "port" | "tls">> | null;
  readonly log: (fields: Readonly<Record<string, unknown>>) => void;
  /** Where other machines open the app, where that is known. */
  readonly openAt?: () => string | null;
  readonly behindProxy?: boolean;
  readonly metricsToken?: string | null;
  /** Most bytes of pictures and sound of one shop. */
  readonly shopBytes?: number;
  readonly allowances?: Readonly<Record<string, Allowance>>;
}

export interface RunningServer {
  readonly port: number;
  /** The port with https; null where none was asked for. */
  readonly secure: Listener | null;
  /** The code that opens the first shop; null when there is one already. */
  readonly code: string | null;
  /** Ends the live streams, lets requests finish, closes the database. */
  readonly stop: () => Promise<void>;
}

const BEAT_SECONDS = 20;
/** How often other processes' news are looked for while pages are open here. */
const LOOK_MILLISECONDS = 1000;
/** How often it is looked for pictures that were removed. */
const SWEEP_MILLISECONDS = 6 * 3_600_000;
const FIRST_SWEEP_MILLISECONDS = 60_000;

/** Brings the tables up to date and answers requests until it is stopped. */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { database, log } = options;
  const steps = await migrate(database);
  if (steps.length > 0) log({ what: "migrated", steps });
  let accepting = true;
  const live = new LiveStreams();
  const metrics = new Metrics();
  metrics.gauge("jetwright_live_streams", "Pages that hear of new records at once", () => live.size);
  metrics.gauge("jetwright_memory_bytes", "Memory of the process", () => process.memoryUsage.rss());
  const services: Services = {
    database,
    queue: new PushQueue(database),
    live,
    metrics,
    limits: new RateLimits(options.allowances ?? USUAL_ALLOWANCES),
    files: options.appFolder === null ? null : new StaticFiles(options.appFolder),
    shopBytes: options.shopBytes ?? SHOP_BYTES,
    now: Date.now,
    log,
    metricsToken: options.metricsToken ?? null,
    behindProxy: options.behindProxy ?? false,
    openAt: options.openAt ?? (() => null),
    serverId: await serverIdOf(database),
    accepting: () => accepting,
  };
  const code = (await shopCount(database)) === 0 ? await setupCode(database, Date.now()) : null;
  const doors = [{ port: options.port, host: options.host }, ...(options.secure ? [options.secure] : [])];
  const listeners = await openAll(createApp(services), doors);
  const [plain, secure = null] = listeners as [Listener, Listener?];
  const timers = [
    setInterval(() => live.beat(), BEAT_SECONDS * 1000),
    setInterval(followOthers(services), LOOK_MILLISECONDS),
    setInterval(sweepPictures(services), SWEEP_MILLISECONDS),
    // A bench PC may be switched off every night.
    setTimeout(sweepPictures(services), FIRST_SWEEP_MILLISECONDS),
  ];
  for (const timer of timers) timer.unref();
  return {
    port: plain.port,
    secure,
    code,
    stop: async () => {
      accepting = false;
      for (const timer of timers) clearInterval(timer);
      live.end(() => true);
      await Promise.all(listeners.map(({ close }) => close()));
      await database.close();
    },
  };
}

/** Opens all doors, or none. */
async function openAll(app: Hono, doors: readonly Door[]): Promise<readonly Listener[]> {
  const open: Listener[] = [];
  try {
    for (const door of doors) open.push(await listen(app.fetch, door));
  } catch (error) {
    await Promise.all(open.map(({ close }) => close()));
    throw error;
  }
  return open;
}

/** Deletes the pictures that were removed long ago. */
const sweepPictures =
  ({ database, now, log }: Services): (() => void) =>
  () =>
    void sweepRemoved(database, now()).then(
      (count) => count > 0 && log({ what: "swept", count }),
      (error: unknown) => log({ what: "database", why: String(error) }),
    );
