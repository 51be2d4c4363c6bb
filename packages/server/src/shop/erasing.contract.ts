import { blankRecord, writeRecord } from "@jetwright/records";
import { beforeEach, describe, expect, test } from "vitest";
import type { Database } from "../database/database.ts";
import { blob } from "../test-blobs.ts";
import { type Arriving, readArriving } from "./arriving.ts";
import { blobOf, isNamed } from "./blobs.ts";
import { callerOf, devicesOf } from "./devices.ts";
import { addRecords, readPage } from "./log.ts";
import { invite, pair } from "./pairing.ts";
import { peopleOf } from "./people.ts";
import type { Scope } from "./scope.ts";
import { addPiece } from "./uploads.ts";

const ALL: Scope = { all: true };
const SECRET = "Jo Ferrant";

const record = (id: string, kind: string, body: object, bike?: string) => ({
  id,
  kind,
  v: 1,
  at: "2026-05-02T10:15:00Z",
  by: { person: SECRET },
  ...(bike !== undefined && { bike }),
  body: body as Record<string, string>,
});
const NOTE = record("n1", "note", { text: SECRET }, "fern");
const OTHER = record("n2", "note", { text: "another's" }, "moss");
const CUSTOMER = record("c1", "customer-described", { customer: "jo", name: SECRET });
const erasure = (body: object, id = "e1") => ({
  ...record(id, "person-erased", body),
  at: "2026-07-01T10:00:00Z",
  by: {},
});

function arrivingOf(one: object): Arriving {
  const read = readArriving(JSON.stringify(one));
  if (!read.ok) throw new RangeError(read.detail);
  return read.value;
}

/** What a database must do when a person's data is removed. */
export function erasingContract(open: () => Promise<{ on: Database; shop: string }>): void {
  let on: Database;
  let shop: string;
  beforeEach(async () => {
    ({ on, shop } = await open());
  });
  const add = (...records: object[]) => addRecords(on, shop, records.map(arrivingOf));
  const read = (cursor = "", scope = ALL) => readPage(on, shop, scope, cursor);
  const blank = (one: Parameters<typeof blankRecord>[0]) => writeRecord(blankRecord(one));

  describe("[R31] a person's data", () => {
    test("is gone from what stands, and every device behind any cursor reads the emptied records", async () => {
      await add(NOTE, CUSTOMER, OTHER);
      const { cursor } = await read();
      await add(erasure({ customer: "jo", bikes: ["fern"] }));
      const { lines, restart } = await read(cursor);
      expect(restart).toBeNull();
      expect(lines.slice(1).sort()).toEqual([blank(CUSTOMER), blank(NOTE)].sort());
      const all = (await read()).lines.join("\n");
      expect(all).not.toContain(`"text":"${SECRET}"`);
      expect(all.split("\n")).toHaveLength(4);
      // Nothing of it is left in any table of the log.
      const rows = await on.all<{ line: string }>("SELECT line FROM record WHERE shop = ? AND id <> ?", [
        shop,
        "n2",
      ]);
      expect(JSON.stringify(rows)).not.toContain(SECRET);
      // A rider of that bike hears of it too, who may not read the erasure itself.
      expect((await read("", { all: false, bikes: ["fern"] })).lines).toEqual([blank(NOTE)]);
    });

    test("a device whose cursor ends at an emptied record begins again", async () => {
      await add(OTHER, NOTE);
      const { cursor } = await read();
      await add(erasure({ bikes: ["fern"] }));
      const { lines, restart } = await read(cursor);
      expect(restart).toBe("epoch");
      expect(lines).toHaveLength(3);
      expect(lines.at(-1)).toBe(blank(NOTE));
    });

    test("is not taken again: the whole text sent again is known, and what comes late is emptied first", async () => {
      await add(NOTE);
      await add(erasure({ customer: "jo", bikes: ["fern"], records: ["late"] }));
      const late = record("late", "note", { text: SECRET }, "moss");
      expect(await add(NOTE, CUSTOMER, late)).toEqual(["known", "added", "added"]);
      expect(await add(NOTE, CUSTOMER, late)).toEqual(["known", "known", "known"]);
      expect(JSON.stringify((await read()).lines)).not.toContain(SECRET);
      // Another record under that id is a conflict as ever.
      expect(await add({ ...NOTE, at: "2026-05-03T10:15:00Z" })).toEqual(["conflict"]);
    });

    test("sent together with its erasure is emptied, in whichever order", async () => {
      expect(
        await add(NOTE, erasure({ records: ["n1"] }), CUSTOMER, erasure({ customer: "jo" }, "e2")),
      ).toEqual(["added", "added", "added", "added"]);
      expect(JSON.stringify((await read()).lines)).not.toContain(SECRET);
    });

    test("of another shop is left alone", async () => {
      const other = await open();
      await addRecords(other.on, other.shop, [arrivingOf(NOTE)]);
      await add(NOTE, erasure({ records: ["n1"], bikes: ["fern"] }));
      expect((await readPage(other.on, other.shop, ALL, "")).lines).toEqual([writeRecord(NOTE)]);
    });

    test("takes the person's name, and their devices', out of the shop's list of people, and no other's", async () => {
      const other = await open();
      const mara = (await peopleOf(on, shop))[0]!;
      const joined = await invite(on, shop, { name: SECRET, role: "technician", bikes: [] }, 0);
      if (!joined.ok) throw new RangeError(joined.detail);
      const { code, person } = joined.value;
      const phone = await pair(on, { code, device: `${SECRET}'s phone` }, 0);
      if (!phone.ok) throw new RangeError(phone.detail);
      const { id: elsewhere } = (await peopleOf(other.on, other.shop))[0]!;
      await add(erasure({ people: [person, elsewhere] }));
      expect((await peopleOf(on, shop)).map(({ id, name }) => [id, name])).toEqual(
        expect.arrayContaining([
          [mara.id, "Mara"],
          [person, ""],
        ]),
      );
      const devices = (await devicesOf(on, shop)).map(({ name, personName }) => [name, personName]);
      expect(devices.sort()).toEqual([
        ["", ""],
        ["bench", "Mara"],
      ]);
      expect((await peopleOf(other.on, other.shop))[0]!.name).toBe("Mara");
      // The device works on; it is shut out as ever.
      expect(await callerOf(on, phone.value.token, 0)).toMatchObject({ person, personName: "" });
    });

    test("takes the clip of a voice along, but not one that another record names", async () => {
      const [mine, shared] = [blob(500, 1), blob(500, 2)];
      const heard = (id: string, clip: string, bike: string) =>
        record(id, "sound-heard", { figures: {}, clip }, bike);
      await add(
        heard("s1", mine.hash, "fern"),
        heard("s2", shared.hash, "fern"),
        heard("s3", shared.hash, "moss"),
      );
      for (const { bytes, hash } of [mine, shared]) {
        await addPiece(
          on,
          { shop, device: "phone", hash, size: bytes.length, type: "audio/wav" },
          0,
          bytes,
          0,
        );
      }
      expect(await blobOf(on, shop, mine.hash)).not.toBeNull();
      await add(erasure({ bikes: ["fern"] }));
      expect(await blobOf(on, shop, mine.hash)).toBeNull();
      expect(await isNamed(on, shop, ALL, mine.hash)).toBe(false);
      expect(await blobOf(on, shop, shared.hash)).not.toBeNull();
      const pieces = "SELECT upload FROM piece WHERE upload IN (SELECT upload FROM blob WHERE shop = ?)";
      expect(await on.all(pieces, [shop])).toHaveLength(1);
    });

    describe("and a clip of it on its way", () => {
      const clip = blob(600, 3);
      const wanted = () => ({ shop, device: "phone", hash: clip.hash, size: 600, type: "audio/wav" });
      const heard = record("s1", "sound-heard", { figures: {}, clip: clip.hash }, "fern");
      const send = (from: number, to: number, through = on) =>
        addPiece(through, wanted(), from, clip.bytes.slice(from, to), 0);
      const gone = async () => {
        const at = "WHERE shop = ? AND hash = ?";
        for (const table of ["blob", "upload", "blob_use"]) {
          expect(await on.all(`SELECT 1 AS one FROM ${table} ${at}`, [shop, clip.hash])).toEqual([]);
        }
        const loose =
          "SELECT upload FROM piece WHERE upload NOT IN (SELECT upload FROM blob) AND upload NOT IN (SELECT id FROM upload)";
        expect(await on.all(loose)).toEqual([]);
        expect(await isNamed(on, shop, ALL, clip.hash)).toBe(false);
      };

      test.each([0, 400])("erased after %i bytes, the rest is not taken, nor the whole", async (first) => {
        await add(heard);
        if (first > 0) expect(await send(0, first)).toMatchObject({ ok: true });
        await add(erasure({ bikes: ["fern"] }));
        expect(await send(first, 600)).toMatchObject({ reason: "not-named" });
        expect(await send(0, 600)).toMatchObject({ reason: "not-named" });
        await gone();
      });

      test("the erasure known before the record that names it, nothing is taken", async () => {
        await add(erasure({ bikes: ["fern"] }));
        await add(heard);
        expect(await send(0, 600)).toMatchObject({ reason: "not-named" });
        await gone();
      });

      test.each([
        [0, 600],
        [400, 600],
        [0, 200],
        [200, 400],
      ])("erased while the piece from %i to %i is being written", async (first, end) => {
        await add(heard);
        if (first > 0) await send(0, first);
        let erasing: Promise<unknown> | undefined;
        // As soon as the piece has found its name, the erasure begins, and is given the time to overtake it.
        const slow: Database = {
          ...on,
          transaction: (work) =>
            on.transaction((sql) =>
              work({
                ...sql,
                all: async (text, parameters) => {
                  const rows = await sql.all(text, parameters);
                  if (erasing === undefined && text.includes("FROM blob_use")) {
                    erasing = add(erasure({ bikes: ["fern"] }));
                    await Promise.race([erasing, new Promise((done) => setTimeout(done, 300))]);
                  }
                  return rows as never;
                },
              }),
            ),
        };
        expect(await send(first, end, slow)).toMatchObject({ value: { arrived: end } });
        await erasing;
        await gone();
      });
    });
  });
}
