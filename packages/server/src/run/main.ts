import { parseArgs } from "node:util";
import { openDatabase, stopWhenAsked } from "./open-database.ts";
import { startServer } from "./server.ts";

/**
 * The server by itself, for a service or a container: `node --import tsx packages/server/src/run/main.ts`. Its log
 * goes to the standard output, one JSON object a line. Secrets come by the environment: DATABASE_URL, METRICS_TOKEN.
 */
const { values } = parseArgs({
  options: {
    port: { type: "string", default: "4173" },
    host: { type: "string", default: "localhost" },
    data: { type: "string", default: "data" },
    app: { type: "string" },
    "behind-proxy": { type: "boolean", default: false },
  },
});
const log = (fields: Readonly<Record<string, unknown>>): void =>
  console.log(JSON.stringify({ at: new Date().toISOString(), ...fields }));
const server = await startServer({
  database: openDatabase(process.env, values.data, log),
  port: Number(values.port),
  host: values.host,
  appFolder: values.app ?? null,
  behindProxy: values["behind-proxy"],
  metricsToken: process.env.METRICS_TOKEN ?? null,
  log,
});
log({ what: "listening", port: server.port });
// For the person at the terminal alone, so not on the stream that a service keeps.
if (server.code !== null) console.error(`The code that opens the shop, once: ${server.code}`);
stopWhenAsked(server.stop);
