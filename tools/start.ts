import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { build, preview } from "vite";
import { ROOT } from "./run-step.ts";

/** `npm start`: builds the app when its sources are newer than the last build, and serves it on this machine. */

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

const { values } = parseArgs({ options: { port: { type: "string", default: "4173" } } });
const port = Number(values.port);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  console.error(`--port takes a whole number from 1 to 65535, got "${values.port}".`);
  process.exit(2);
}

const stale =
  !existsSync(BUILT) || SOURCES.some((source) => newest(join(ROOT, source)) > statSync(BUILT).mtimeMs);
if (stale) {
  console.log("Building the app …");
  await build({ root: APP, configFile: join(APP, "vite.config.ts"), logLevel: "warn" });
}
const server = await preview({
  root: APP,
  configFile: join(APP, "vite.config.ts"),
  preview: { port, strictPort: false },
  logLevel: "warn",
});
const address = server.resolvedUrls?.local[0] ?? `http://localhost:${port}/`;
console.log(`\nJetwright is at ${address}`);
console.log('Open it in a browser: "Look at an example shop" is one tap away. Ctrl+C stops it.');
