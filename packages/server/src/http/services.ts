import type { Context } from "hono";
import type { Database } from "../database/database.ts";
import type { Caller } from "../shop/devices.ts";
import type { PushQueue } from "../shop/push-queue.ts";
import type { LiveStreams } from "./live.ts";
import type { Metrics } from "./metrics.ts";
import type { RateLimits } from "./rate-limit.ts";
import type { StaticFiles } from "./static-files.ts";

/** What the routes work with. */
export interface Services {
  readonly database: Database;
  readonly queue: PushQueue;
  readonly live: LiveStreams;
  readonly metrics: Metrics;
  readonly limits: RateLimits;
  /** The app's files; null where another server has them. */
  readonly files: StaticFiles | null;
  /** Most bytes of pictures and sound of one shop. */
  readonly shopBytes: number;
  /** Milliseconds since 1970. */
  readonly now: () => number;
  /** One line of the log, as fields; never given a secret, a body or an address with a query. */
  readonly log: (fields: Readonly<Record<string, unknown>>) => void;
  /** Told to whoever reads the metrics; null: nobody may. */
  readonly metricsToken: string | null;
  /** A proxy of ours stands in front: its word on the address and on https counts. */
  readonly behindProxy: boolean;
  /** Where other machines open the app, such as https://192.168.1.7:4443/; null where that is not known here. */
  readonly openAt?: () => string | null;
  /** Short text that keeps the cookies of servers on one machine apart. */
  readonly serverId: string;
  /** False once the process is asked to stop. */
  readonly accepting: () => boolean;
}

export type Ctx = Context;

/** A route behind the door: who came is known. */
export type Handler = (context: Ctx, caller: Caller, services: Services) => Promise<Response> | Response;
