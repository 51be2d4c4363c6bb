import type { Database } from "./database/database.ts";
import { openSqlite } from "./database/sqlite.ts";
import { type RunningServer, type ServerOptions, startServer } from "./run/server.ts";

// A server in memory on a port of its own, with a shop and its owner's device.

const PLENTY = { burst: 1e9, perSecond: 1e9 };

export interface TestShop {
  readonly server: RunningServer;
  readonly database: Database;
  /** Such as http://localhost:4173. */
  readonly base: string;
  readonly token: string;
  /** Bugs of ours that it met. */
  readonly bugs: readonly unknown[];
}

export async function testShop(
  more: Pick<ServerOptions, "shopBytes" | "allowances"> = {},
): Promise<TestShop> {
  const bugs: unknown[] = [];
  const database = openSqlite(":memory:");
  const server = await startServer({
    database,
    port: 0,
    host: "localhost",
    appFolder: null,
    log: (fields) => fields.what === "bug" && bugs.push(fields.why),
    ...more,
    allowances: { code: PLENTY, codes: PLENTY, request: PLENTY, stranger: PLENTY, ...more.allowances },
  });
  const base = `http://localhost:${server.port}`;
  const setup = { code: server.code, shop: "Tarn End", person: "Mara", device: "bench", give: "token" };
  const answer = await fetch(`${base}/api/v1/setup`, { method: "POST", body: JSON.stringify(setup) });
  const { token } = (await answer.json()) as { token: string };
  return { server, database, base, token, bugs };
}
