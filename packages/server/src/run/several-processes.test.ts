import { tmpdir } from "node:os";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Sent } from "../http/test-server.ts";
import { blob, sha256 } from "../test-blobs.ts";
import { startTestPostgres } from "../test-postgres.ts";
import { startProcess, type TestProcess } from "../test-process.ts";
import { lineOf } from "../test-records.ts";

// Three processes on one PostgreSQL, as behind a balancer.

const postgres = await startTestPostgres();

describe.skipIf(postgres === null)("several processes on one database", () => {
  const processes: TestProcess[] = [];
  let token = "";

  const call = (at: TestProcess, method: string, path: string, body?: Sent, headers = {}) =>
    fetch(`${at.base}/${path}`, {
      method,
      headers: { authorization: `Bearer ${token}`, ...headers },
      ...(body === undefined ? {} : { body }),
    });
  const json = async <T>(answer: Promise<Response>): Promise<T> => (await (await answer).json()) as T;

  /** Waits until a page is told of news. */
  async function hearNews(reader: ReadableStreamDefaultReader<Uint8Array>): Promise<void> {
    for (let heard = ""; !heard.includes("event: records"); ) {
      const { done, value } = await reader.read();
      if (done) throw new Error("The stream ended without news");
      heard += new TextDecoder().decode(value);
    }
  }

  /** The log behind a cursor, and the new cursor. */
  async function pull(at: TestProcess, cursor: string): Promise<{ ids: string[]; cursor: string }> {
    const text = await (await call(at, "GET", `records?after=${encodeURIComponent(cursor)}`)).text();
    const [head, ...lines] = text.trimEnd().split("\n");
    const page = JSON.parse(head!) as { cursor: string; restart: string | null };
    expect(page.restart).toBeNull();
    return { ids: lines.map((line) => (JSON.parse(line) as { id: string }).id), cursor: page.cursor };
  }

  beforeAll(async () => {
    const shared = { data: tmpdir(), databaseUrl: postgres!.freshUrl() };
    // Alone on empty tables, so that its code is the one that counts.
    const first = await startProcess({ ...shared, first: true });
    const setup = { code: first.code, shop: "Tarn End", person: "Mara", device: "bench", give: "token" };
    ({ token } = await json<{ token: string }>(call(first, "POST", "setup", JSON.stringify(setup))));
    const others = [1, 2].map(() => startProcess({ ...shared, first: false }));
    processes.push(first, ...(await Promise.all(others)));
  }, 60_000);

  afterAll(async () => {
    await Promise.all(processes.map((one) => one.end("SIGTERM")));
    await postgres?.remove();
  });

  test("writers on each and a reader that polls each: none missed, none twice", async () => {
    const [rounds, each] = [12, 5];
    let writing = true;
    const readers = processes.map(async (at) => {
      const seen: string[] = [];
      let cursor = "";
      for (let last = false; !last; ) {
        last = !writing;
        const page = await pull(at, cursor);
        cursor = page.cursor;
        seen.push(...page.ids);
      }
      return seen;
    });
    await Promise.all(
      processes.flatMap((at, p) =>
        [0, 1].map(async (w) => {
          for (let round = 0; round < rounds; round++) {
            const lines = Array.from({ length: each }, (_, i) => lineOf(`p${p}-w${w}-${round}-${i}`));
            const answer = await json<{ added: number }>(call(at, "POST", "records", lines.join("\n")));
            expect(answer.added).toBe(each);
          }
        }),
      ),
    );
    writing = false;
    for (const seen of await Promise.all(readers)) {
      expect(seen).toHaveLength(processes.length * 2 * rounds * each);
      expect(new Set(seen).size).toBe(seen.length);
    }
  }, 60_000);

  test("a page open on one hears of a record taken by another, and is let go when shut out by a third", async () => {
    const [a, b, c] = processes as [TestProcess, TestProcess, TestProcess];
    const who = { name: "Jo", role: "technician" };
    const { code } = await json<{ code: string }>(call(a, "POST", "invitations", JSON.stringify(who)));
    const pairing = JSON.stringify({ code, device: "phone", give: "token" });
    const phone = await json<{ token: string; device: string }>(call(b, "POST", "pair", pairing));
    const { cursor } = await pull(c, "");
    const stream = await call(c, "GET", "live", undefined, { authorization: `Bearer ${phone.token}` });
    const reader = stream.body!.getReader();
    await call(a, "POST", "records", lineOf("news"));
    await hearNews(reader);
    // The first word may be for what stood before the page opened; the record is there all the same.
    expect((await pull(c, cursor)).ids).toEqual(["news"]);
    await call(b, "DELETE", `devices/${phone.device}`);
    for (let done = false; !done; ) ({ done } = await reader.read());
    const again = await call(c, "GET", "me", undefined, { authorization: `Bearer ${phone.token}` });
    expect(again.status).toBe(401);
  }, 60_000);

  test("names and addresses that no text of the database can hold are refused, and are no bug", async () => {
    const [a] = processes as [TestProcess];
    const body = (change: object) => JSON.stringify({ name: "Jo", role: "rider", ...change });
    const { person } = await json<{ person: string }>(call(a, "POST", "invitations", body({})));
    const asked: [method: string, path: string, body: string | undefined, status: number][] = [
      ["POST", "invitations", body({ name: "J\0o" }), 400],
      ["POST", "invitations", body({ bikes: ["\0"] }), 400],
      ["POST", "invitations", JSON.stringify({ person: `${person}\0` }), 400],
      ["PUT", `people/${person}%00/bikes`, JSON.stringify({ bikes: [] }), 404],
      ["PUT", `people/${person}/bikes`, JSON.stringify({ bikes: ["bramble"] }), 200],
      ["DELETE", "devices/%00", undefined, 404],
      ["POST", "pair", JSON.stringify({ code: "\0", device: "x" }), 403],
      ["POST", "pair", JSON.stringify({ code: "x", device: "\0" }), 400],
      ["GET", "records?after=%00", undefined, 200],
      ["GET", "blobs/%00", undefined, 404],
    ];
    for (const [method, path, sent, status] of asked) {
      expect([path, sent, (await call(a, method, path, sent)).status]).toEqual([path, sent, status]);
    }
  }, 60_000);

  test("a page open on one hears that a picture sent to another is whole", async () => {
    const [a, b] = processes as [TestProcess, TestProcess, TestProcess];
    const { bytes, hash } = blob(100, 9);
    await call(a, "POST", "records", lineOf("names-that", { text: hash }));
    const stream = await call(b, "GET", "live");
    const reader = stream.body!.getReader();
    // Of the record, or of what stood before; what more there is to hear of those comes within this time.
    await hearNews(reader);
    await new Promise((done) => setTimeout(done, 2500));
    const next = hearNews(reader);
    const head = { "upload-offset": "0", "upload-length": "100", "content-type": "image/jpeg" };
    expect((await call(a, "PUT", `blobs/${hash}/upload`, bytes, head)).status).toBe(200);
    await next;
    expect((await call(b, "GET", `blobs/${hash}`)).status).toBe(200);
    await reader.cancel();
  }, 60_000);

  test("the pieces of a picture may go to any of them", async () => {
    const { bytes, hash } = blob(90_000);
    await call(processes[0]!, "POST", "records", lineOf("names-it", { text: hash }));
    for (const [i, at] of processes.entries()) {
      expect(await json(call(at, "GET", `blobs/${hash}/upload`))).toEqual({
        arrived: i * 30_000,
        whole: false,
      });
      await call(at, "PUT", `blobs/${hash}/upload`, bytes.slice(i * 30_000, (i + 1) * 30_000), {
        "upload-offset": String(i * 30_000),
        "upload-length": "90000",
        "content-type": "image/jpeg",
      });
    }
    for (const at of processes) {
      const given = await (await call(at, "GET", `blobs/${hash}`)).arrayBuffer();
      expect(sha256(new Uint8Array(given))).toBe(hash);
    }
  }, 60_000);
});
