import type { Dialect } from "./database.ts";

/** A step from one shape of the tables to the next. Once shipped it is never changed; a new step follows it. */
export interface Migration {
  readonly name: string;
  readonly statements: (dialect: Dialect) => readonly string[];
}

/** Every step, in the order they are run. */
export const MIGRATIONS: readonly Migration[] = [
  {
    name: "1-log-and-people",
    statements: () => [
      "CREATE TABLE meta (key TEXT PRIMARY KEY, value TEXT NOT NULL)",
      `CREATE TABLE shop (
        id TEXT PRIMARY KEY, name TEXT NOT NULL, last_seq BIGINT NOT NULL, created_at BIGINT NOT NULL)`,
      `CREATE TABLE record (
        shop TEXT NOT NULL, seq BIGINT NOT NULL, id TEXT NOT NULL, kind TEXT NOT NULL,
        bike TEXT, target TEXT, hash TEXT NOT NULL, line TEXT NOT NULL, PRIMARY KEY (shop, seq))`,
      "CREATE UNIQUE INDEX record_id ON record (shop, id)",
      "CREATE INDEX record_bike ON record (shop, bike, seq)",
      "CREATE INDEX record_target ON record (shop, target) WHERE target IS NOT NULL",
      `CREATE TABLE person (
        shop TEXT NOT NULL REFERENCES shop (id), id TEXT NOT NULL, name TEXT NOT NULL, role TEXT NOT NULL,
        created_at BIGINT NOT NULL, PRIMARY KEY (shop, id))`,
      `CREATE TABLE person_bike (
        shop TEXT NOT NULL, person TEXT NOT NULL, bike TEXT NOT NULL, PRIMARY KEY (shop, person, bike),
        FOREIGN KEY (shop, person) REFERENCES person (shop, id))`,
      `CREATE TABLE device (
        id TEXT PRIMARY KEY, shop TEXT NOT NULL, person TEXT NOT NULL, name TEXT NOT NULL,
        token_hash TEXT NOT NULL UNIQUE, created_at BIGINT NOT NULL, seen_at BIGINT NOT NULL, revoked_at BIGINT,
        FOREIGN KEY (shop, person) REFERENCES person (shop, id))`,
      "CREATE INDEX device_shop ON device (shop)",
      `CREATE TABLE pairing (
        code_hash TEXT PRIMARY KEY, shop TEXT, person TEXT, expires_at BIGINT NOT NULL)`,
    ],
  },
  {
    name: "2-pictures-and-sound",
    statements: ({ bytes }) => [
      `CREATE TABLE blob (
        shop TEXT NOT NULL REFERENCES shop (id), hash TEXT NOT NULL, upload TEXT NOT NULL, size BIGINT NOT NULL,
        type TEXT NOT NULL, created_at BIGINT NOT NULL, PRIMARY KEY (shop, hash))`,
      `CREATE TABLE upload (
        id TEXT PRIMARY KEY, shop TEXT NOT NULL REFERENCES shop (id), hash TEXT NOT NULL, device TEXT NOT NULL,
        size BIGINT NOT NULL, arrived BIGINT NOT NULL, type TEXT NOT NULL, created_at BIGINT NOT NULL)`,
      "CREATE UNIQUE INDEX upload_device ON upload (shop, hash, device)",
      `CREATE TABLE piece (
        upload TEXT NOT NULL, place BIGINT NOT NULL, bytes ${bytes} NOT NULL, PRIMARY KEY (upload, place))`,
      `CREATE TABLE blob_use (
        shop TEXT NOT NULL, hash TEXT NOT NULL, record TEXT NOT NULL, PRIMARY KEY (shop, hash, record))`,
    ],
  },
  {
    name: "3-mark-of-arrival",
    statements: () => ["ALTER TABLE record ADD COLUMN mark TEXT NOT NULL DEFAULT ''"],
  },
];
