import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { blobOf, piecesOf } from "../shop/blobs.ts";
import { addRecords, readPage } from "../shop/log.ts";
import { progressOf } from "../shop/uploads.ts";
import { sha256 } from "../test-blobs.ts";
import { arriving } from "../test-records.ts";
import type { Database, Row } from "./database.ts";
import { migrate } from "./migrate.ts";
import { MIGRATIONS } from "./migrations.ts";

const FIXTURES = join(import.meta.dirname, "../../fixtures");
const TABLES = {
  meta: "key",
  shop: "id",
  record: "shop, seq",
  person: "shop, id",
  person_bike: "shop, person, bike",
  device: "id",
  pairing: "code_hash",
  blob: "shop, hash",
  blob_use: "shop, hash, record",
  upload: "id",
  piece: "upload, place",
} as const;

/** What a server that shipped left behind: the shapes of the tables after so many steps. */
const shapesOf = (name: string): number[] =>
  readdirSync(FIXTURES).flatMap((file) => {
    const [, shape] = new RegExp(`^${name}-(\\d+)[.]sql$`).exec(file) ?? [];
    return shape === undefined ? [] : [Number(shape)];
  });

async function allRows(on: Database): Promise<Record<string, readonly Row[]>> {
  const rows: Record<string, readonly Row[]> = {};
  for (const [table, order] of Object.entries(TABLES)) {
    rows[table] = await on.all(`SELECT * FROM ${table} ORDER BY ${order}`);
  }
  return rows;
}

const columnsOf = (on: Database): Promise<readonly Row[]> =>
  on.all(
    on.dialect.name === "sqlite"
      ? `SELECT t.name AS "table", c.name AS "column" FROM sqlite_master t, pragma_table_info(t.name) c
         WHERE t.type = 'table' ORDER BY 1, 2`
      : `SELECT table_name AS "table", column_name AS "column" FROM information_schema.columns
         WHERE table_schema = 'public' ORDER BY 1, 2`,
  );

/** Migrating from every shape that shipped. Given a way to open a database without tables; who gives it closes it. */
export function migrationContract(name: string, openEmpty: () => Database): void {
  const shapes = shapesOf(name);

  test("a fixture stands for the shape of today and for each that shipped", () => {
    // A new step needs a fixture of the shape it makes: fixtures/write-fixture.ts. Shape 1 never shipped.
    expect(shapes.toSorted((a, b) => a - b)).toEqual(MIGRATIONS.map((_, i) => i + 1).slice(1));
  });

  describe.each(shapes)("from shape %d", (shape) => {
    const load = async (): Promise<Database> => {
      const on = openEmpty();
      const text = readFileSync(join(FIXTURES, `${name}-${shape}.sql`), "utf8");
      for (const statement of text.split(";\n").filter((one) => one.trim() !== "")) await on.run(statement);
      return on;
    };

    test("every row is kept, with all it held", async () => {
      const on = await load();
      const before = await allRows(on);
      expect(Object.values(before).map((rows) => rows.length > 0)).toEqual(
        Object.keys(TABLES).map(() => true),
      );
      expect(await migrate(on)).toEqual(MIGRATIONS.slice(shape).map((step) => step.name));
      const after = await allRows(on);
      for (const [table, rows] of Object.entries(before)) {
        expect(after[table]).toHaveLength(rows.length);
        for (const [i, row] of rows.entries()) expect(after[table]![i]).toMatchObject(row);
      }
      const fresh = openEmpty();
      await migrate(fresh);
      expect(await columnsOf(on)).toEqual(await columnsOf(fresh));
    });

    test("the log, a picture and an upload half done go on", async () => {
      const on = await load();
      await migrate(on);
      const shop = (await on.all<{ id: string }>("SELECT id FROM shop"))[0]!.id;
      const page = await readPage(on, shop, { all: true }, "");
      expect(page.lines.map((line) => (JSON.parse(line) as { id: string }).id)).toEqual([
        "air",
        "seen",
        "late",
        "strike",
      ]);
      expect(await addRecords(on, shop, [arriving("late", { bike: "heron" }), arriving("new")])).toEqual([
        "known",
        "added",
      ]);
      expect((await readPage(on, shop, { all: true }, page.cursor)).lines).toHaveLength(1);
      const { hash } = (await on.all<{ hash: string }>("SELECT hash FROM blob"))[0]!;
      const picture = (await blobOf(on, shop, hash))!;
      const pieces: Uint8Array[] = [];
      for await (const piece of piecesOf(on, picture.upload, picture.size)) pieces.push(piece);
      expect(sha256(Buffer.concat(pieces))).toBe(hash);
      const [upload] = await on.all<{ device: string; hash: string }>("SELECT device, hash FROM upload");
      expect(await progressOf(on, { shop, ...upload! })).toEqual({ arrived: 4, whole: false });
    });
  });
}
