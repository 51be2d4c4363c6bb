import * as fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { DatabaseTrouble } from "../database/database.ts";
import { lineOf } from "../test-records.ts";
import { RateLimits, USUAL_ALLOWANCES } from "./rate-limit.ts";
import { PUSH_BYTES } from "./routes/records.ts";
import { type Sent, testServer } from "./test-server.ts";

const first = async (stream: ReadableStreamDefaultReader<Uint8Array>): Promise<string> =>
  new TextDecoder().decode((await stream.read()).value);

describe("what is sent", () => {
  test("is taken line by line; what cannot be taken is named with its line", async () => {
    const { call, newShop } = await testServer();
    const { token } = await newShop();
    const body = [lineOf("a"), "", "{half", lineOf("b"), lineOf("a", { text: "other" }), lineOf("b")].join(
      "\n",
    );
    const answer = (await (await call("POST", "/api/v1/records", token, body)).json()) as {
      refused: { line: number; id: string | null; reason: string }[];
    };
    expect(answer).toMatchObject({ added: 2, known: 1 });
    expect(answer.refused.map(({ line, id, reason }) => [line, id, reason])).toEqual([
      [3, null, "not-a-record"],
      [5, "a", "known-otherwise"],
    ]);
  });

  test("comes back as the same record, however its keys were ordered", async () => {
    const { call, newShop } = await testServer();
    const { token } = await newShop();
    const odd = '{"body":{"text":"hello"},"at":"2026-05-02T10:15:00Z","v":1,"kind":"note","id":"a"}';
    await call("POST", "/api/v1/records", token, odd);
    const again = await (await call("POST", "/api/v1/records", token, lineOf("a"))).json();
    expect(again).toEqual({ added: 0, known: 1, refused: [] });
    const [head, line] = (await (await call("GET", "/api/v1/records", token)).text()).split("\n");
    expect(line).toBe(lineOf("a"));
    expect(JSON.parse(head!)).toMatchObject({ restart: null, more: false });
  });

  test("may be neither too large, too many, too deep nor cut off", async () => {
    const { call, newShop, services } = await testServer();
    const { token } = await newShop();
    const post = (body: Sent, headers = {}) => call("POST", "/api/v1/records", token, body, headers);
    expect((await post("x".repeat(PUSH_BYTES + 1))).status).toBe(413);
    expect((await post("x", { "content-length": "99999999999" })).status).toBe(413);
    expect((await post("\n".repeat(3000))).status).toBe(413);
    const deep = `{"id":"d","kind":"note","at":"2026-05-02T10:15:00Z","body":${"[".repeat(1_000_000)}`;
    expect(await (await post(deep)).json()).toMatchObject({
      added: 0,
      refused: [{ reason: "not-a-record" }],
    });
    const closed = `${deep}${"]".repeat(1_000_000)}}`;
    expect(await (await post(closed)).json()).toMatchObject({ added: 0 });
    expect((await post(new Uint8Array([0xff, 0xfe, 0x00]))).status).toBe(400);
    const nested = `{"code":${"[".repeat(5000)}${"]".repeat(5000)}}`;
    expect(await (await call("POST", "/api/v1/pair", null, nested)).json()).toMatchObject({
      reason: "too-deep",
    });
    expect(await services.database.all("SELECT id FROM record")).toEqual([]);
  });

  test("whatever it is, gets an answer that is no bug of ours", async () => {
    const { call, newShop, logged } = await testServer();
    const { token, person, device } = await newShop();
    const paths = [
      ["POST", "/api/v1/records"],
      ["POST", "/api/v1/pair"],
      ["POST", "/api/v1/setup"],
      ["POST", "/api/v1/invitations"],
      ["PUT", `/api/v1/people/${person}/bikes`],
    ] as const;
    const body = fc.oneof(
      fc.uint8Array({ maxLength: 200 }).map((bytes) => new Uint8Array(bytes)),
      fc.json({ maxDepth: 4 }),
      fc.string({ unit: "binary", maxLength: 100 }),
      fc.constantFrom('{"__proto__":{"code":1}}', "null", "[]", '{"code":"a","device":{"toString":1}}'),
      fc.json().map((json) => lineOf("fuzz").replace('"hello"', () => json)),
    );
    const query = fc.oneof(fc.string({ maxLength: 60 }), fc.constantFrom("x~00000000~1~a", "%00", "1e9"));
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...paths), body, query, async ([method, path], sent, asked) => {
        const answer = await call(method, path, token, sent as Sent);
        expect(answer.status).toBeLessThan(500);
        const pull = await call(
          "GET",
          `/api/v1/records?after=${encodeURIComponent(asked)}&most=${encodeURIComponent(asked)}`,
          token,
        );
        expect(pull.status).toBe(200);
        const stranger = await call("GET", "/api/v1/me", null, undefined, {
          authorization: `Bearer ${asked.replaceAll(/[^\x20-\x7e]/g, "")}`,
          cookie: `jetwright_test=${asked.replaceAll(/[^\x20-\x7e]/g, "")}`,
        });
        expect(stranger.status).toBe(401);
      }),
      { seed: 20261125, numRuns: 120 },
    );
    expect(logged.filter(({ what }) => what === "bug")).toEqual([]);
    expect((await call("DELETE", `/api/v1/devices/${device}`, token)).status).toBe(200);
  }, 60_000);
});

describe("the door", () => {
  test("a browser's cookie is out of reach for scripts and for other sites' forms", async () => {
    const { call, newShop, send } = await testServer();
    const owner = await newShop();
    const { code } = await send<{ code: string }>("POST", "/api/v1/invitations", owner.token, {
      name: "Kit",
      role: "technician",
    });
    const paired = await call("POST", "/api/v1/pair", null, JSON.stringify({ code, device: "phone" }));
    const cookie = paired.headers.get("set-cookie")!;
    expect(cookie).toMatch(/^jetwright_test=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict; Max-Age=\d+$/);
    expect(await paired.text()).not.toContain(cookie.slice(15, 58));
    const sent = { cookie: cookie.split(";")[0]! };
    expect((await call("GET", "/api/v1/me", null, undefined, sent)).status).toBe(200);
    expect((await call("POST", "/api/v1/records", null, lineOf("a"), sent)).status).toBe(401);
    const ours = { ...sent, "x-jetwright": "1" };
    expect((await call("POST", "/api/v1/records", null, lineOf("a"), ours)).status).toBe(200);
  });

  test("behind https the cookie is for https alone, and the browser is told to stay there", async () => {
    const { call, newShop, send } = await testServer({ behindProxy: true });
    const owner = await newShop();
    const who = { name: "Kit", role: "rider" };
    const { code } = await send<{ code: string }>("POST", "/api/v1/invitations", owner.token, who);
    const https = { "x-forwarded-proto": "https" };
    const paired = await call("POST", "/api/v1/pair", null, JSON.stringify({ code, device: "phone" }), https);
    expect(paired.headers.get("set-cookie")).toContain("; Secure");
    expect(paired.headers.get("strict-transport-security")).toBe("max-age=31536000");
  });

  test("every answer carries the strict headers, also a refusal", async () => {
    const { call } = await testServer();
    for (const path of ["/", "/healthz", "/api/v1/me", "/../../etc/passwd"]) {
      const { headers } = await call("GET", path);
      expect(headers.get("content-security-policy")).toContain("default-src 'none'");
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("referrer-policy")).toBe("no-referrer");
    }
  });

  test("codes are tried slowly, also from many addresses", async () => {
    let now = 1_780_000_000_000;
    const limits = new RateLimits(USUAL_ALLOWANCES);
    const { call } = await testServer({ limits, behindProxy: true, now: () => now });
    const attempt = async (address: string) =>
      (
        await call("POST", "/api/v1/pair", null, JSON.stringify({ code: "abcd-efgh", device: "x" }), {
          "x-forwarded-for": address,
        })
      ).status;
    const one = [];
    for (let i = 0; i < 12; i++) one.push(await attempt("10.0.0.1"));
    expect(one).toEqual([...Array(10).fill(403), 429, 429]);
    now += 30_000;
    expect(await attempt("10.0.0.1")).toBe(403);
    // Half a minute has filled the common allowance of 100 again, and one of it is used.
    const many = [];
    for (let i = 0; i < 130; i++) many.push(await attempt(`10.1.0.${i}`));
    expect(many.filter((status) => status === 403).length).toBe(99);
  });

  test("no secret stands in a log line", async () => {
    const { call, newShop, send, logged } = await testServer();
    const owner = await newShop();
    const who = { name: "Kit", role: "rider" };
    const { code } = await send<{ code: string }>("POST", "/api/v1/invitations", owner.token, who);
    await call("POST", "/api/v1/pair", null, JSON.stringify({ code, device: "phone", give: "token" }));
    await call("GET", `/api/v1/records?after=${owner.token}`, owner.token);
    await call("GET", `/api/v1/${owner.token}`, owner.token);
    await call("DELETE", `/api/v1/devices/${owner.token}`, owner.token);
    const text = JSON.stringify(logged);
    for (const secret of [owner.token, code, code.replace("-", "")]) expect(text).not.toContain(secret);
    expect(logged.map(({ route }) => route)).toContain("/api/v1/devices/:device");
  });
});

describe("news", () => {
  test("reach the open pages of the shop, and no other's", async () => {
    const { call, newShop, services } = await testServer();
    const [ours, theirs] = [await newShop("One"), await newShop("Two")];
    const reader = (await call("GET", "/api/v1/live", ours.token)).body!.getReader();
    const other = (await call("GET", "/api/v1/live", theirs.token)).body!.getReader();
    expect(await first(reader)).toBe("retry: 3000\n\n");
    await first(other);
    await call("POST", "/api/v1/records", ours.token, lineOf("a"));
    expect(await first(reader)).toBe("event: records\ndata: new\n\n");
    services.live.beat();
    expect(await first(other)).toBe(": still here\n\n");
    await Promise.all([reader.cancel(), other.cancel()]);
    expect(services.live.size).toBe(0);
  });

  test("a reader that does not read costs a handful of events and is let go", async () => {
    const { call, newShop, services } = await testServer();
    const { token } = await newShop();
    const answer = await call("GET", "/api/v1/live", token);
    for (let i = 0; i < 1000; i++) services.live.news(services.live.shops[0]!);
    for (let i = 0; i < 5; i++) services.live.beat();
    expect(services.live.size).toBe(0);
    const text = await answer.text();
    expect(text.match(/event: records/g)!.length).toBeLessThanOrEqual(4);
  });

  test("end at once when the device is shut out", async () => {
    const { call, newShop, join, send, services } = await testServer();
    const owner = await newShop();
    const rider = await join(owner, "rider");
    const reader = (await call("GET", "/api/v1/live", rider.token)).body!.getReader();
    await first(reader);
    await send("DELETE", `/api/v1/devices/${rider.device}`, owner.token);
    expect((await reader.read()).done).toBe(true);
    expect(services.live.size).toBe(0);
  });
});

describe("watching the server", () => {
  test("health, readiness and metrics say what they should", async () => {
    let accepting = true;
    const { call, newShop } = await testServer({ accepting: () => accepting });
    const { token } = await newShop();
    await call("POST", "/api/v1/records", token, lineOf("a"));
    expect((await call("GET", "/healthz")).status).toBe(200);
    expect((await call("GET", "/readyz")).status).toBe(200);
    accepting = false;
    expect((await call("GET", "/readyz")).status).toBe(503);
    expect((await call("GET", "/healthz")).status).toBe(200);
    expect((await call("GET", "/metrics")).status).toBe(404);
    expect((await call("GET", "/metrics", "watchinG")).status).toBe(404);
    const text = await (await call("GET", "/metrics", "watching")).text();
    expect(text).toContain("jetwright_records_added_total 1\n");
    expect(text).toContain('jetwright_requests_total{route="/api/v1/records",status="200"} 1\n');
    // OpenMetrics 1.0.0, "Overall structure": the exposition ends with this line.
    expect(text.endsWith("# EOF\n")).toBe(true);
  });

  test.each([
    ["full", 507],
    ["away", 503],
    ["busy", 503],
  ] as const)("a database that is %s is said, and nothing is called kept", async (trouble, status) => {
    const { call, newShop, services } = await testServer();
    const { token } = await newShop();
    Object.assign(services.queue, {
      add: () => Promise.reject(new DatabaseTrouble(trouble, new Error("for the test"))),
    });
    const answer = await call("POST", "/api/v1/records", token, lineOf("a"));
    expect(answer.status).toBe(status);
    expect(answer.headers.get("retry-after")).toBe("2");
  });

  test("who reads is answered though the disk is too full to note when that was", async () => {
    let now = 1_780_000_000_000;
    const { call, newShop, services } = await testServer({ now: () => now });
    const { token } = await newShop();
    await call("GET", "/api/v1/records", token);
    const run = vi
      .spyOn(services.database, "run")
      .mockImplementation(() => Promise.reject(new DatabaseTrouble("full", new Error("for the test"))));
    now += 2 * 3_600_000;
    expect((await call("GET", "/api/v1/records", token)).status).toBe(200);
    expect(run).toHaveBeenCalledOnce();
  });
});
