import { expect, test } from "vitest";
import { DatabaseTrouble } from "./database.ts";
import { openPostgres } from "./postgres.ts";

test("a PostgreSQL whose name or port nobody has is away, and no bug", async () => {
  // RFC 6761, 6.4: no name ends in ".invalid". Port 1 of this machine is nobody's.
  for (const url of ["postgres://x@nobody.invalid/x", "postgres://x@127.0.0.1:1/x"]) {
    const database = openPostgres(url);
    const trouble = await database.all("SELECT 1 AS one").catch((error: unknown) => error);
    expect(trouble).toBeInstanceOf(DatabaseTrouble);
    expect(trouble).toMatchObject({ trouble: "away" });
    await database.close();
  }
}, 60_000);
