import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Database } from "../src/database/database.ts";
import { openPostgres } from "../src/database/postgres.ts";
import { openSqlite } from "../src/database/sqlite.ts";
import { type RunningServer, startServer } from "../src/run/server.ts";
import { startTestPostgres } from "../src/test-postgres.ts";
import { lineOf } from "../src/test-records.ts";

/**
 * `npm run server:figures`: how fast the server takes and gives records on this machine, beside what the bare
 * database does with the same rows in the same run; writes the table into docs/server.md.
 */

const SECONDS = Number(process.argv[2] ?? 4);
const PORT = 4295;
const BATCH = 500;
const TEXT = "x".repeat(250);
const PLENTY = { burst: 1e12, perSecond: 1e12 };
const PAGE = join(import.meta.dirname, "../../../docs/server.md");
const rows: string[] = [];
const tell = (what: string, value: string): void => {
  console.log(`${what}: ${value}`);
  rows.push(`| ${what} | ${value} |`);
};
const whole = (value: number): string => Math.round(value).toLocaleString("en").replaceAll(",", " ");

let number = 0;
const lines = (count: number): string[] =>
  Array.from({ length: count }, () => lineOf(`n${++number}`, { text: TEXT }));

/** Runs the work by so many at once until the time is over; gives records a second. */
async function rate(clients: number, each: (client: number) => Promise<number>): Promise<number> {
  const start = performance.now();
  const end = start + SECONDS * 1000;
  const counts = await Promise.all(
    Array.from({ length: clients }, async (_, client) => {
      let count = 0;
      while (performance.now() < end) count += await each(client);
      return count;
    }),
  );
  return counts.reduce((sum, count) => sum + count, 0) / ((performance.now() - start) / 1000);
}

/** The bare database: the same columns and indexes, one transaction a batch, no server and no reading of the text. */
async function bare(database: Database, clients: number, batch: number): Promise<number> {
  return rate(clients, async (client) => {
    const records = Array.from({ length: batch }, () => {
      const id = `b${++number}`;
      return [
        `bare${client}`,
        number,
        id,
        "note",
        null,
        null,
        "0".repeat(64),
        lineOf(id, { text: TEXT }),
        "mark",
      ];
    });
    await database.transaction((sql) =>
      sql.insertMany(
        "record",
        [
          ["shop", "text"],
          ["seq", "bigint"],
          ["id", "text"],
          ["kind", "text"],
          ["bike", "text"],
          ["target", "text"],
          ["hash", "text"],
          ["line", "text"],
          ["mark", "text"],
        ],
        records,
      ),
    );
    return batch;
  });
}

async function measure(name: string, database: Database, beside: Database): Promise<void> {
  const server: RunningServer = await startServer({
    database,
    port: PORT,
    host: "localhost",
    appFolder: null,
    log: (fields) => fields.what === "bug" && console.error(fields),
    allowances: { code: PLENTY, codes: PLENTY, request: PLENTY, stranger: PLENTY },
  });
  const base = `http://localhost:${PORT}/api/v1`;
  const body = { code: server.code, shop: "x", person: "x", device: "x", give: "token" };
  const { token } = (await (
    await fetch(`${base}/setup`, { method: "POST", body: JSON.stringify(body) })
  ).json()) as { token: string };
  const headers = { authorization: `Bearer ${token}` };
  const push = async (count: number): Promise<number> => {
    const answer = await fetch(`${base}/records`, { method: "POST", headers, body: lines(count).join("\n") });
    const { added } = (await answer.json()) as { added: number };
    if (added !== count) throw new Error(`${added} of ${count} were added`);
    return count;
  };
  await rate(4, () => push(1));
  for (const batch of [1, BATCH]) {
    for (const clients of [1, 16, 64]) {
      const limit = await bare(beside, Math.min(clients, 16), batch);
      const got = await rate(clients, () => push(batch));
      const share = `${Math.round((100 * got) / limit)} %`;
      tell(
        `${name}: ${clients} clients, ${batch === 1 ? "one record" : `${BATCH} records`} a request`,
        `${whole(got)} records/s, ${share} of the bare database's ${whole(limit)}`,
      );
    }
  }
  await pullAll(name, database, base, headers, push);
  await streams(name, base, headers, push);
  await server.stop();
}

async function pullAll(
  name: string,
  database: Database,
  base: string,
  headers: Record<string, string>,
  push: (count: number) => Promise<number>,
): Promise<void> {
  const count = async () =>
    Number((await database.all<{ n: number }>("SELECT max(last_seq) AS n FROM shop"))[0]!.n);
  while ((await count()) < 100_000) await push(2000);
  const before = process.memoryUsage.rss();
  const start = performance.now();
  let [got, cursor, more, most] = [0, "", true, before];
  while (more && got < 100_000) {
    const answer = await fetch(`${base}/records?after=${encodeURIComponent(cursor)}`, { headers });
    const [head, ...page] = (await answer.text()).trimEnd().split("\n");
    ({ cursor, more } = JSON.parse(head!) as { cursor: string; more: boolean });
    got += page.length;
    most = Math.max(most, process.memoryUsage.rss());
  }
  const seconds = (performance.now() - start) / 1000;
  tell(
    `${name}: a new device reads ${whole(got)} records`,
    `${seconds.toFixed(1)} s; server and device together grew by ${whole((most - before) / 1e6)} MB`,
  );
}

/** 500 open pages of 100 devices hear of one new record. */
async function streams(
  name: string,
  base: string,
  headers: Record<string, string>,
  push: (count: number) => Promise<number>,
): Promise<void> {
  const ask = async <T>(path: string, body: object): Promise<T> =>
    (await (
      await fetch(`${base}/${path}`, { method: "POST", headers, body: JSON.stringify(body) })
    ).json()) as T;
  const readers: ReadableStreamDefaultReader<Uint8Array>[] = [];
  const cut = new AbortController();
  for (let i = 0; i < 100; i++) {
    const { code } = await ask<{ code: string }>("invitations", { name: "x", role: "technician" });
    const { token } = await ask<{ token: string }>("pair", { code, device: "x", give: "token" });
    for (let page = 0; page < 5; page++) {
      const stream = await fetch(`${base}/live`, {
        headers: { authorization: `Bearer ${token}` },
        signal: cut.signal,
      });
      const reader = stream.body!.getReader();
      await reader.read();
      readers.push(reader);
    }
  }
  const start = performance.now();
  const heard = Promise.all(readers.map((reader) => reader.read().then(() => performance.now() - start)));
  await push(1);
  const times = (await heard).sort((a, b) => a - b);
  tell(
    `${name}: ${times.length} live streams hear of a record`,
    `half within ${whole(times[Math.floor(times.length / 2)]!)} ms, the last after ${whole(times.at(-1)!)} ms`,
  );
  cut.abort();
}

const folder = mkdtempSync(join(tmpdir(), "jetwright-figures-"));
await measure("SQLite", openSqlite(join(folder, "a")), await prepared(openSqlite(join(folder, "b"))));
const postgres = await startTestPostgres();
if (postgres !== null) {
  const open = () => openPostgres(postgres.freshUrl(), { connections: 16 });
  await measure("PostgreSQL", open(), await prepared(open()));
  await postgres.remove();
}
rmSync(folder, { recursive: true, force: true });

async function prepared(database: Database): Promise<Database> {
  const { migrate } = await import("../src/database/migrate.ts");
  await migrate(database);
  return database;
}

const page = readFileSync(PAGE, "utf8");
const [START, END] = ["<!-- figures -->", "<!-- end of figures -->"];
const table = `${START}\n\n| what | measured |\n| --- | --- |\n${rows.join("\n")}\n\n${END}`;
writeFileSync(PAGE, page.slice(0, page.indexOf(START)) + table + page.slice(page.indexOf(END) + END.length));
process.exit(0);
