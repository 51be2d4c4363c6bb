import type { Database } from "../database/database.ts";
import { setBikes } from "./pairing.ts";
import type { Role } from "./scope.ts";

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly bikes: readonly string[];
}

export async function peopleOf(database: Database, shop: string): Promise<readonly Person[]> {
  const people = await database.all<{ id: string; name: string; role: Role }>(
    "SELECT id, name, role FROM person WHERE shop = ? ORDER BY created_at, id",
    [shop],
  );
  const owned = await database.all<{ person: string; bike: string }>(
    "SELECT person, bike FROM person_bike WHERE shop = ? ORDER BY bike",
    [shop],
  );
  return people.map(({ id, name, role }) => ({
    id,
    name,
    role,
    bikes: owned.filter(({ person }) => person === id).map(({ bike }) => bike),
  }));
}

/** Says which bikes are a rider's; false when the shop has no such rider. */
export async function setBikesOf(
  database: Database,
  shop: string,
  person: string,
  bikes: readonly string[],
): Promise<boolean> {
  return database.transaction(async (sql) => {
    const found = await sql.all("SELECT id FROM person WHERE shop = ? AND id = ? AND role = 'rider'", [
      shop,
      person,
    ]);
    if (found.length === 0) return false;
    await setBikes(sql, shop, person, bikes);
    return true;
  });
}
