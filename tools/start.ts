import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { accept, type Outcome } from "@jetwright/core";
import {
  type LanServer,
  openDatabase,
  type RunningServer,
  startOnLan,
  startServer,
  stopWhenAsked,
} from "@jetwright/server";
import { build } from "vite";
import { ROOT } from "./run-step.ts";

/**
 * `npm start`: builds the app when its sources are newer than the last build, serves it on this machine, and keeps
 * the shop's log in the data folder (or in the PostgreSQL that DATABASE_URL names). With --lan the shop's phones
 * reach it too.
 */

const APP = join(ROOT, "packages/app");
const BUILT = join(ROOT, "dist/app/index.html");
const SOURCES = ["packages/app", "packages/core/src", "packages/records/src", "demo", "package-lock.json"];

function newest(path: string): number {
  const found = statSync(path);
  if (!found.isDirectory()) return found.mtimeMs;
  return readdirSync(path).reduce(
    (latest, name) => (name === "node_modules" ? latest : Math.max(latest, newest(join(path, name)))),
    0,
  );
}

const { values } = parseArgs({
  options: {
    port: { type: "string", default: "4173" },
    data: { type: "string", default: process.env.JETWRIGHT_DATA ?? join(ROOT, "data") },
    lan: { type: "boolean", default: false },
    "lan-port": { type: "string", default: "4443" },
    "trust-port": { type: "string", default: "4480" },
  },
});
function portOf(flag: "port" | "lan-port" | "trust-port"): number {
  const port = Number(values[flag]);
  if (Number.isInteger(port) && port >= 1 && port <= 65535) return port;
  console.error(`--${flag} takes a whole number from 1 to 65535, got "${values[flag]}".`);
  process.exit(2);
}
const port = portOf("port");
const lan = { dataFolder: values.data, port: portOf("lan-port"), trustPort: portOf("trust-port") };

const stale =
  !existsSync(BUILT) || SOURCES.some((source) => newest(join(ROOT, source)) > statSync(BUILT).mtimeMs);
if (stale) {
  console.log("Building the app …");
  await build({ root: APP, configFile: join(APP, "vite.config.ts"), logLevel: "warn" });
}
const log = (fields: Readonly<Record<string, unknown>>): void => {
  // A person looks at this terminal: what goes well is not worth a line.
  if (fields.what !== "request") console.error(JSON.stringify(fields));
};

/** Ports tried when the one before is taken. */
const PORTS = 10;

async function serve(tries = 0): Promise<Outcome<RunningServer | LanServer>> {
  const database = openDatabase(process.env, values.data, log);
  try {
    const appFolder = join(ROOT, "dist/app");
    const options = { database, port: port + tries, host: "localhost", appFolder, log };
    return values.lan ? await startOnLan(options, lan) : accept(await startServer(options));
  } catch (error) {
    // Closed already, where the server had started before a port was found taken.
    await database.close().catch(() => undefined);
    const { code, port: taken } = error as NodeJS.ErrnoException & { readonly port?: number };
    if (code !== "EADDRINUSE") throw error;
    if (taken === port + tries && tries < PORTS && taken < 65535) return serve(tries + 1);
    console.error(
      `Port ${taken} is in use by another program. Name others with --port, --lan-port and --trust-port.`,
    );
    process.exit(2);
  }
}

const started = await serve();
if (!started.ok) {
  console.error(started.detail);
  process.exit(2);
}
const server = started.value;
stopWhenAsked(server.stop);
console.log(`\nJetwright is at http://localhost:${server.port}/`);
console.log('Open it in a browser: "Look at an example shop" is one tap away. Ctrl+C stops it.');
if ("told" in server) console.log(`\n${server.told}`);
if (server.code !== null) {
  console.log(`To share one log among phones, open More, then Shop, and type this code once: ${server.code}`);
}
