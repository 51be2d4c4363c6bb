import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blob, sha256, type TestBlob } from "../test-blobs.ts";
import { lineOf } from "../test-records.ts";
import { PIECE_BYTES, readHead } from "./routes/blobs.ts";
import { type Sent, testServer } from "./test-server.ts";

async function shopWith(...blobs: readonly TestBlob[]) {
  const server = await testServer();
  const owner = await server.newShop();
  const lines = blobs.map(({ hash }, i) => lineOf(`p${i}`, { text: hash }));
  await server.call("POST", "/api/v1/records", owner.token, lines.join("\n"));
  const put = (hash: string, bytes: Sent, headers: Record<string, string>) =>
    server.call("PUT", `/api/v1/blobs/${hash}/upload`, owner.token, bytes, {
      "content-type": "image/jpeg",
      ...headers,
    });
  const at = (offset: number, length: number) => ({
    "upload-offset": String(offset),
    "upload-length": String(length),
  });
  const get = (hash: string, method = "GET") => server.call(method, `/api/v1/blobs/${hash}`, owner.token);
  return { ...server, owner, put, at, get };
}

describe("pictures and clips", () => {
  test("go there in pieces and come back as they were, to be kept and not to be run", async () => {
    const picture = blob(PIECE_BYTES + 5000);
    const { put, at, get, call, owner } = await shopWith(picture);
    const size = picture.bytes.length;
    expect((await get(picture.hash)).status).toBe(404);
    expect((await get(picture.hash, "HEAD")).status).toBe(404);
    const first = await put(picture.hash, picture.bytes.slice(0, PIECE_BYTES), at(0, size));
    expect(await first.json()).toEqual({ arrived: PIECE_BYTES, whole: false });
    const asked = await call("GET", `/api/v1/blobs/${picture.hash}/upload`, owner.token);
    expect(await asked.json()).toEqual({ arrived: PIECE_BYTES, whole: false });
    expect((await get(picture.hash)).status).toBe(404);
    const last = await put(picture.hash, picture.bytes.slice(PIECE_BYTES), at(PIECE_BYTES, size));
    expect(await last.json()).toEqual({ arrived: size, whole: true });
    const given = await get(picture.hash);
    expect(Object.fromEntries(given.headers)).toMatchObject({
      "content-type": "image/jpeg",
      "content-length": String(size),
      "content-disposition": "attachment",
      "x-content-type-options": "nosniff",
      "cache-control": "no-store",
    });
    expect(sha256(new Uint8Array(await given.arrayBuffer()))).toBe(picture.hash);
    const head = await get(picture.hash, "HEAD");
    expect([head.status, head.headers.get("content-length"), await head.text()]).toEqual([
      200,
      String(size),
      "",
    ]);
  });

  test("one erased while it is read ends with an error, not as if it were whole", async () => {
    const picture = blob(3000);
    const { put, at, get, services } = await shopWith(picture);
    for (const from of [0, 1000, 2000]) {
      await put(picture.hash, picture.bytes.slice(from, from + 1000), at(from, 3000));
    }
    const reader = (await get(picture.hash)).body!.getReader();
    expect(new Uint8Array((await reader.read()).value!)).toEqual(picture.bytes.slice(0, 1000));
    await services.database.run("DELETE FROM piece");
    const rest = async () => {
      for (;;) if ((await reader.read()).done) return "whole";
    };
    await expect(rest()).rejects.toThrow("taken away");
  });

  test("what no record names is not taken, and odd names are not looked for", async () => {
    const { put, at, get } = await shopWith();
    const { hash, bytes } = blob(10);
    for (const name of [hash, hash.toUpperCase(), hash.slice(1), "..%2F..%2Fetc%2Fpasswd", "%00"]) {
      expect((await put(name, bytes, at(0, 10))).status).toBe(404);
      expect((await get(name)).status).toBe(404);
    }
  });

  test.each([
    ["a page", { "content-type": "text/html" }, 415],
    ["a drawing that may hold a script", { "content-type": "image/svg+xml" }, 415],
    ["no type", { "content-type": "" }, 415],
    ["a photo above 8 MB", { "upload-length": "8000001" }, 413],
    ["a clip above 20 MB", { "upload-length": "20000001", "content-type": "audio/webm;codecs=opus" }, 413],
    ["a clip of 20 MB", { "upload-length": "20000000", "content-type": "audio/webm;codecs=opus" }, 200],
    ["an offset behind the end", { "upload-offset": "11" }, 400],
    ["an offset that is not there", { "upload-offset": "4" }, 409],
    ["a length of nothing", { "upload-length": "0" }, 400],
    ["a length that is less than what comes", { "upload-length": "9" }, 409],
  ])("%s gets its answer", async (_what, change, status) => {
    const { hash, bytes } = blob(10);
    const { put, at } = await shopWith({ hash, bytes });
    expect((await put(hash, bytes, { ...at(0, 10), ...change })).status).toBe(status);
  });

  test("a piece above the limit is not read to its end, and one cut off leaves what stood", async () => {
    const picture = blob(3000);
    const { put, at, call, owner, app } = await shopWith(picture);
    const size = picture.bytes.length;
    await put(picture.hash, picture.bytes.slice(0, 1000), at(0, size));
    expect((await put(picture.hash, new Uint8Array(PIECE_BYTES + 1), at(1000, size))).status).toBe(413);
    const cut = new ReadableStream<Uint8Array>({
      pull: (controller) => controller.error(new Error("gone")),
      start: (controller) => controller.enqueue(picture.bytes.slice(1000, 2000)),
    });
    const answer = await app.request(`/api/v1/blobs/${picture.hash}/upload`, {
      method: "PUT",
      body: cut,
      duplex: "half",
      headers: { authorization: `Bearer ${owner.token}`, "content-type": "image/jpeg", ...at(1000, size) },
    } as RequestInit);
    expect(await answer.json()).toMatchObject({ reason: "body-cut-off" });
    const asked = await call("GET", `/api/v1/blobs/${picture.hash}/upload`, owner.token);
    expect(await asked.json()).toEqual({ arrived: 1000, whole: false });
  });

  test("a shop whose room is used up is told so", async () => {
    const picture = blob(500);
    const { call, newShop } = await testServer({ shopBytes: 499 });
    const { token } = await newShop();
    await call("POST", "/api/v1/records", token, lineOf("p", { text: picture.hash }));
    const answer = await call("PUT", `/api/v1/blobs/${picture.hash}/upload`, token, picture.bytes, {
      "upload-offset": "0",
      "upload-length": "500",
      "content-type": "image/png",
    });
    expect(answer.status).toBe(507);
    expect(await answer.json()).toMatchObject({ reason: "shop-full" });
  });
});

test("whatever stands in the headers of a piece is read as whole numbers or refused", () => {
  const typed = fc.oneof(
    fc.string({ maxLength: 24 }),
    fc.integer().map(String),
    fc.double().map(String),
    fc.constantFrom(
      "",
      "0",
      "00",
      "+1",
      "-0",
      "1e3",
      "0x10",
      " 7",
      "9".repeat(40),
      "1, 1",
      "٣",
      "1_0",
      "NaN",
    ),
  );
  const plain = fc.nat(30_000_000).map(String);
  fc.assert(
    fc.property(fc.oneof(typed, plain), fc.oneof(typed, plain), (offset, length) => {
      let headers: Headers;
      try {
        headers = new Headers({
          "upload-offset": offset,
          "upload-length": length,
          "content-type": "audio/wav",
        });
      } catch {
        return;
      }
      const read = readHead(headers);
      // Headers come without the blanks around them.
      const [a, b] = [headers.get("upload-offset")!, headers.get("upload-length")!];
      const digits = (text: string) => /^[0-9]+$/.test(text) && String(Number(text)) === text;
      const good = digits(a) && digits(b) && Number(b) >= 1 && Number(a) <= Number(b) && Number(b) <= 20e6;
      expect(read.ok).toBe(good);
      if (read.ok) expect(read.value).toEqual({ offset: Number(a), size: Number(b), type: "audio/wav" });
    }),
    { seed: 20261125, numRuns: 3000 },
  );
});
