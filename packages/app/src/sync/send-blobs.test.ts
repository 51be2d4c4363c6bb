import { describe, expect, test } from "vitest";
import { sweepRemoved } from "../../../server/src/shop/removed-blobs.ts";
import { blob, sha256 } from "../../../server/src/test-blobs.ts";
import { cuttingProxy } from "../../../server/src/test-proxy.ts";
import { lineOf } from "../../../server/src/test-records.ts";
import { testShop } from "../../../server/src/test-shop.ts";
import { blobFetcher } from "./fetch-blobs.ts";
import { type BlobLocal, type BlobRemote, type Settled, sendBlobs } from "./send-blobs.ts";
import { blobsAt, remoteAt } from "./test-remote.ts";

/** A phone with these pictures, as the app keeps them. */
function phone(pictures: readonly Blob[] = []) {
  const kept = new Map<string, Blob>();
  const put = async (picture: Blob): Promise<string> => {
    const hash = sha256(new Uint8Array(await picture.arrayBuffer()));
    kept.set(hash, picture);
    return hash;
  };
  let settled: Settled = { there: [], never: [] };
  const left: number[] = [];
  const stays: (readonly [never: number, noRoom: boolean])[] = [];
  const local: BlobLocal = {
    photos: {
      held: async () => [...kept].map(([hash, picture]) => ({ hash, bytes: picture.size })),
      get: async (hash) => kept.get(hash),
    },
    settled: async () => settled,
    settle: async (now) => {
      settled = now;
    },
    left: (count) => void left.push(count),
    kept: (...told) => void stays.push(told),
    stop: () => false,
  };
  return { local, kept, put, left, stays, settled: () => settled, ready: Promise.all(pictures.map(put)) };
}

const jpeg = (size: number, number = 1): Blob => new Blob([blob(size, number).bytes], { type: "image/jpeg" });

describe("pictures and clips", () => {
  test("go to the shop after their records, also through a proxy that cuts connections, and come to another phone", async () => {
    const { server, base, token, bugs } = await testShop();
    let connections = 0;
    const proxy = await cuttingProxy(server.port, () => {
      connections++;
      return connections % 3 === 0
        ? { up: 1e9, down: 1e9 }
        : { up: 1e9, down: 200 + 150 * (connections % 4) };
    });
    const pictures = [jpeg(400_000, 1), jpeg(1000, 2), jpeg(300_000, 3)];
    const one = phone(pictures);
    const hashes = await one.ready;
    const cutting = blobsAt(`http://localhost:${proxy.port}`, token);
    // No record names them yet: they wait, and nothing is lost by asking.
    await sendBlobs(one.local, blobsAt(base, token));
    expect(one.settled()).toEqual({ there: [], never: [] });
    expect(one.left.at(-1)).toBe(3);
    await remoteAt(base, token).push(hashes.map((hash, i) => lineOf(`p${i}`, { text: hash })));
    let failures = 0;
    for (let round = 0; one.settled().there.length < 3 && round < 60; round++) {
      await sendBlobs(one.local, cutting).catch(() => {
        failures++;
      });
    }
    expect(one.settled().there.toSorted()).toEqual(hashes.toSorted());
    expect(one.left.at(-1)).toBe(0);
    expect(failures).toBeGreaterThan(3);
    const other = phone();
    const fetchBlob = blobFetcher(other, blobsAt(base, token));
    const got = await Promise.all([...hashes, hashes[0]!].map(fetchBlob));
    expect(got).toEqual(["here", "here", "here", "here"]);
    expect([...other.kept.keys()].toSorted()).toEqual(hashes.toSorted());
    expect(other.kept.get(hashes[0]!)!.type).toBe("image/jpeg");
    expect(await fetchBlob("0".repeat(64))).toBe("not-there");
    await proxy.stop();
    await server.stop();
    expect(bugs).toEqual([]);
    expect(await fetchBlob(hashes[1]!)).toBe("away");
  }, 60_000);

  test("what the shop will never take is asked once and kept here", async () => {
    const { server, base, token, bugs } = await testShop();
    const one = phone([
      new Blob([blob(10).bytes], { type: "text/html" }),
      new Blob([new Uint8Array(8_000_001)], { type: "image/png" }),
      jpeg(20, 2),
    ]);
    const hashes = await one.ready;
    await remoteAt(base, token).push(hashes.map((hash, i) => lineOf(`p${i}`, { text: hash })));
    await sendBlobs(one.local, blobsAt(base, token));
    expect(one.settled()).toEqual({ there: [hashes[2]], never: [hashes[0], hashes[1]] });
    expect(one.kept.size).toBe(3);
    expect(one.stays).toEqual([[2, false]]);
    await server.stop();
    expect(bugs).toEqual([]);
  });

  test("a picture damaged on this phone is not sent for what it was", async () => {
    const { server, base, token, bugs } = await testShop();
    const one = phone([jpeg(500, 4)]);
    const [hash] = await one.ready;
    one.kept.set(hash!, jpeg(500, 5));
    await remoteAt(base, token).push([lineOf("p", { text: hash! })]);
    await sendBlobs(one.local, blobsAt(base, token));
    expect(one.settled()).toEqual({ there: [], never: [hash] });
    expect(await blobFetcher(phone(), blobsAt(base, token))(hash!)).toBe("not-there");
    await server.stop();
    expect(bugs).toEqual([]);
  });
});

test("a shop without room says so, is asked once a round, and goes on with what it has begun", async () => {
  const one = phone([jpeg(300, 1), jpeg(300, 2), jpeg(300, 3)]);
  const [first, second, begun] = await one.ready;
  const { server, base, token, bugs } = await testShop({ shopBytes: 300 });
  const remote = blobsAt(base, token);
  await remoteAt(base, token).push([first, second, begun].map((hash, i) => lineOf(`p${i}`, { text: hash! })));
  await remote.piece(begun!, 0, 300, jpeg(300, 3).slice(0, 100, "image/jpeg"));
  const asked: string[] = [];
  const watched: BlobRemote = {
    ...remote,
    piece: (hash, ...more) => {
      asked.push(hash);
      return remote.piece(hash, ...more);
    },
  };
  await sendBlobs(one.local, watched);
  expect(asked).toEqual([first, begun]);
  expect(one.settled()).toEqual({ there: [begun], never: [] });
  expect([one.left.at(-1), one.stays.at(-1)]).toEqual([2, [0, true]]);
  await server.stop();
  expect(bugs).toEqual([]);
});

test("a picture deleted at the shop and named again is sent again; one that stays struck is not", async () => {
  const one = phone([jpeg(300, 1), jpeg(300, 2)]);
  const [back, struck] = await one.ready;
  const { server, database, base, token, bugs } = await testShop();
  const { push } = remoteAt(base, token);
  const strike = (id: string, record: string) => lineOf(id, { kind: "record-struck", body: { record } });
  await push([lineOf("p1", { text: back! }), lineOf("p2", { text: struck! })]);
  await sendBlobs(one.local, blobsAt(base, token));
  await push([strike("s1", "p1"), strike("s2", "p2")]);
  await sweepRemoved(database, 0);
  expect(await sweepRemoved(database, 31 * 86_400_000)).toBe(2);
  await sendBlobs(one.local, blobsAt(base, token));
  expect(await blobsAt(base, token).get(back!)).toBeNull();
  await push([strike("s3", "s1")]);
  await sendBlobs(one.local, blobsAt(base, token));
  expect(one.settled().there.toSorted()).toEqual([back!, struck!].toSorted());
  const other = phone();
  const fetchBlob = blobFetcher(other, blobsAt(base, token));
  expect([await fetchBlob(back!), await fetchBlob(struck!)]).toEqual(["here", "not-there"]);
  await server.stop();
  expect(bugs).toEqual([]);
});

test("records come first: the sending ends after the piece that is on its way", async () => {
  const one = phone([jpeg(500_000, 6)]);
  await one.ready;
  const sent: number[] = [];
  const remote: BlobRemote = {
    wanted: async () => [],
    progress: async () => ({ arrived: 0, whole: false }),
    piece: async (_hash, offset, size, piece) => {
      sent.push(offset);
      const arrived = offset + piece.size;
      return { said: "taken", progress: { arrived, whole: arrived === size } };
    },
    get: async () => null,
  };
  await sendBlobs({ ...one.local, stop: () => sent.length === 2 }, remote);
  expect(sent).toEqual([0, 128_000]);
  expect(one.settled()).toEqual({ there: [], never: [] });
});

test("what is damaged on its way here is not taken for the picture", async () => {
  const other = phone();
  const fetchBlob = blobFetcher(other, { get: async () => jpeg(10, 7) });
  expect(await fetchBlob(blob(10, 8).hash)).toBe("not-there");
  const full = blobFetcher(
    { put: () => Promise.reject(new Error("no room")) },
    { get: async () => jpeg(10, 7) },
  );
  expect(await full(blob(10, 7).hash)).toBe("not-there");
});
