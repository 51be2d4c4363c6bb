import { migrate } from "../database/migrate.ts";
import { openSqlite } from "../database/sqlite.ts";
import { setupCode } from "../shop/pairing.ts";
import { PushQueue } from "../shop/push-queue.ts";
import type { Role } from "../shop/scope.ts";
import { SHOP_BYTES } from "../shop/uploads.ts";
import { createApp } from "./app.ts";
import { LiveStreams } from "./live.ts";
import { Metrics } from "./metrics.ts";
import { RateLimits } from "./rate-limit.ts";
import type { Services } from "./services.ts";

// A server in memory for the tests, without a port, and people to use it.

const PLENTY = { burst: 1e9, perSecond: 1e9 };

export type Sent = string | Uint8Array<ArrayBuffer>;

export interface Member {
  readonly token: string;
  readonly person: string;
  readonly device: string;
  readonly shop: string;
}

export async function testServer(change: Partial<Services> = {}) {
  const database = openSqlite(":memory:");
  await migrate(database);
  const logged: Readonly<Record<string, unknown>>[] = [];
  const services: Services = {
    database,
    queue: new PushQueue(database),
    live: new LiveStreams(),
    metrics: new Metrics(),
    limits: new RateLimits({ code: PLENTY, codes: PLENTY, request: PLENTY, stranger: PLENTY }),
    files: null,
    shopBytes: SHOP_BYTES,
    now: Date.now,
    log: (fields) => void logged.push(fields),
    metricsToken: "watching",
    behindProxy: false,
    serverId: "test",
    accepting: () => true,
    ...change,
  };
  const app = createApp(services);

  const call = async (method: string, path: string, token: string | null = null, body?: Sent, headers = {}) =>
    app.request(path, {
      method,
      headers: { ...(token === null ? {} : { authorization: `Bearer ${token}` }), ...headers },
      ...(body === undefined ? {} : { body }),
    });
  const send = async <T>(method: string, path: string, token: string | null, body?: object): Promise<T> => {
    const answer = await call(method, path, token, body === undefined ? undefined : JSON.stringify(body));
    if (!answer.ok) throw new RangeError(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return (await answer.json()) as T;
  };

  const newShop = async (shop = "Tarn End"): Promise<Member> => {
    const code = await setupCode(database, services.now());
    return send("POST", "/api/v1/setup", null, {
      code,
      shop,
      person: "Mara",
      device: "bench",
      give: "token",
    });
  };
  const join = async (owner: Member, role: Role, bikes: readonly string[] = []): Promise<Member> => {
    const who = { name: `A ${role}`, role, bikes };
    const { code } = await send<{ code: string }>("POST", "/api/v1/invitations", owner.token, who);
    return send("POST", "/api/v1/pair", null, { code, device: "phone", give: "token" });
  };
  return { app, services, logged, call, send, newShop, join };
}
