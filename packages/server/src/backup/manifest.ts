import { readFileSync } from "node:fs";
import { join } from "node:path";
import { accept, type Outcome, refuse } from "@jetwright/core";
import * as z from "zod/mini";

/** The last file of a backup to be written: a folder without it was not finished. */
export const MANIFEST = "backup.json";

const SHOP = z.strictObject({
  id: z.string().check(z.regex(/^[a-z0-9]{1,32}$/)),
  records: z.number(),
  blobs: z.number(),
  /** SHA-256 of each of the shop's text files. */
  files: z.record(z.string(), z.string()),
});
const FORM = z.strictObject({
  format: z.literal("jetwright-backup"),
  version: z.literal(1),
  madeAt: z.string(),
  server: z.string(),
  shops: z.array(SHOP),
});

/** What a backup holds. */
export type Manifest = z.infer<typeof FORM>;
export type ShopManifest = z.infer<typeof SHOP>;

export type ManifestReason = "not-a-backup" | "newer-backup";

/** Reads what a folder says of itself. */
export function readManifest(folder: string): Outcome<Manifest, ManifestReason> {
  let text: unknown;
  try {
    text = JSON.parse(readFileSync(join(folder, MANIFEST), "utf8"));
  } catch {
    return refuse(
      "not-a-backup",
      `There is no readable ${MANIFEST} in ${folder}: this is no backup, or one that was cut off.`,
    );
  }
  const read = z.safeParse(FORM, text);
  if (read.success) return accept(read.data);
  const version = (text as { version?: unknown } | null)?.version;
  if (typeof version === "number" && version > 1) {
    return refuse("newer-backup", "A newer version wrote this backup. Put it back with that version.");
  }
  return refuse("not-a-backup", `${MANIFEST} in ${folder} does not have the form of a backup's.`);
}
