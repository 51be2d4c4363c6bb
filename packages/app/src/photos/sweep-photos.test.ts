import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { photosNamed } from "../engine/answers/photos/photos-named.ts";
import { shopOf } from "../engine/answers/test-shop.ts";
import { openDatabase } from "../store/database.ts";
import type { Shop } from "../store/shop.ts";
import { sweepPhotos } from "./sweep-photos.ts";

const DAY = 24 * 3_600_000;

test("a picture whose record is struck goes a day later, unless the strike is struck as well", async () => {
  const database = await openDatabase("swept");
  const lines: string[] = [];
  const engine = { ask: async () => photosNamed(shopOf(lines)) };
  const shop = { database, engine } as unknown as Shop;
  const write = async (id: string, kind: string, body: object) => {
    const line = JSON.stringify({
      id,
      kind,
      v: 1,
      at: `2026-05-01T10:0${lines.length}:00Z`,
      bike: "b",
      body,
    });
    lines.push(line);
    await database.records.add([{ id, line }]);
  };
  expect(await sweepPhotos(shop, 0)).toBe(0);
  const [kept, wantedBack, removed] = await Promise.all(
    ["kept", "wanted back", "removed"].map((bytes) => database.photos.put(new Blob([bytes]))),
  );
  await write("p1", "photo", { hash: kept });
  await write("p2", "photo", { hash: wantedBack, part: "main" });
  await write("p3", "photo", { hash: removed, part: "main" });
  await write("s2", "record-struck", { record: "p2" });
  await write("s3", "record-struck", { record: "p3" });
  expect(await sweepPhotos(shop, 0)).toBe(0);
  await write("u2", "record-struck", { record: "s2" });
  expect(await sweepPhotos(shop, DAY)).toBe(1);
  expect(await database.photos.has(removed!)).toBe(false);
  expect((await database.photos.held()).map(({ hash }) => hash).sort()).toEqual([kept, wantedBack].sort());
});
