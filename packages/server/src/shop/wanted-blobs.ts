import type { Database } from "../database/database.ts";
import { COUNTS } from "./removed-blobs.ts";
import { type Scope, scopeCondition } from "./scope.ts";

/** Most fingerprints that are told at once. */
const MOST = 2000;

/**
 * The pictures and clips that a record which counts names, as far as the scope sees it, and the shop has not got: not
 * yet, or not any more, as they were deleted and then named again. Of very many only a part.
 */
export async function wantedBlobs(
  database: Database,
  shop: string,
  scope: Scope,
): Promise<readonly string[]> {
  const { sql: condition, parameters } = scopeCondition(scope, database.dialect.listed);
  const rows = await database.all<{ wanted: string }>(
    `SELECT DISTINCT blob_use.hash AS wanted
       FROM blob_use JOIN record ON record.shop = blob_use.shop AND record.id = blob_use.record
       WHERE blob_use.shop = ? ${condition} AND ${COUNTS} AND NOT EXISTS (
         SELECT 1 FROM blob WHERE blob.shop = blob_use.shop AND blob.hash = blob_use.hash)
       ORDER BY wanted LIMIT ?`,
    [shop, ...parameters, MOST],
  );
  return rows.map(({ wanted }) => wanted);
}
