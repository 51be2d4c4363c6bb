import { beforeEach, describe, expect, test } from "vitest";
import type { Database } from "../database/database.ts";
import { LiveStreams } from "../http/live.ts";
import { devicesOf, revoke } from "../shop/devices.ts";
import { addRecords } from "../shop/log.ts";
import { addPiece } from "../shop/uploads.ts";
import { blob } from "../test-blobs.ts";
import { arriving } from "../test-records.ts";
import { lookAtOthers } from "./follow-others.ts";

/** What pages open at one process hear of what another did on the same database. */
export function followingContract(open: () => Promise<{ on: Database; shop: string }>): void {
  let on: Database;
  let shop: string;
  beforeEach(async () => {
    ({ on, shop } = await open());
  });

  /** A page of the shop, and what it hears at each look. */
  async function page() {
    const live = new LiveStreams();
    const device = (await devicesOf(on, shop))[0]!.id;
    const reader = live.open(shop, device)!.getReader();
    await reader.read();
    const look = lookAtOthers({ database: on, live });
    return {
      device,
      /** Whether there was news; a mark told after the look says that all before it was read. */
      heard: async (): Promise<boolean> => {
        await look();
        live.beat();
        for (let news = false; ; ) {
          const { value, done } = await reader.read();
          const text = new TextDecoder().decode(value);
          if (done || text.startsWith(":")) return news;
          news ||= text.includes("event: records");
        }
      },
      open: () => live.size === 1,
      look,
    };
  }

  describe("a page open here", () => {
    test("hears of a record and of a picture that is whole, each once", async () => {
      const { bytes, hash } = blob(200);
      const { heard } = await page();
      expect([await heard(), await heard()]).toEqual([true, false]);
      await addRecords(on, shop, [arriving("p", { body: { photo: hash } })]);
      expect([await heard(), await heard()]).toEqual([true, false]);
      const wanted = { shop, device: "elsewhere", hash, size: 200, type: "image/jpeg" };
      await addPiece(on, wanted, 0, bytes.slice(0, 100), 0);
      expect(await heard()).toBe(false);
      await addPiece(on, wanted, 100, bytes.slice(100), 0);
      expect([await heard(), await heard()]).toEqual([true, false]);
    });

    test("is let go when its device is shut out elsewhere, and hears nothing of another shop", async () => {
      const other = await open();
      const mine = await page();
      await mine.heard();
      await addRecords(other.on, other.shop, [arriving("x")]);
      expect(await mine.heard()).toBe(false);
      await revoke(on, shop, mine.device, 0);
      await mine.look();
      expect(mine.open()).toBe(false);
    });
  });
}
