import { parseArgs } from "node:util";
import { openDatabase, stopWhenAsked } from "./open-database.ts";
import { startServer } from "./server.ts";
import { FINE, type ServerCommand, type Terminal } from "./terminal.ts";

const MANUAL = `
jetwright serve [--port 4173] [--host localhost] [--data FOLDER] [--app FOLDER] [--behind-proxy]

Keeps a shop's log and serves the built app (--app dist/app) until it is asked to stop. What
happens goes to the standard output, one JSON object a line. Secrets come by the environment:
DATABASE_URL, METRICS_TOKEN. docs/server.md says more.
`.trim();

export const serve: ServerCommand = { name: "serve", manual: MANUAL, run };

async function run(argv: readonly string[], { env, out, error }: Terminal): Promise<number> {
  const { values } = parseArgs({
    args: [...argv],
    options: {
      port: { type: "string", default: "4173" },
      host: { type: "string", default: "localhost" },
      data: { type: "string", default: env.JETWRIGHT_DATA ?? "data" },
      app: { type: "string" },
      "behind-proxy": { type: "boolean", default: false },
    },
  });
  const log = (fields: Readonly<Record<string, unknown>>): void =>
    out(`${JSON.stringify({ at: new Date().toISOString(), ...fields })}\n`);
  const server = await startServer({
    database: openDatabase(env, values.data, log),
    port: Number(values.port),
    host: values.host,
    appFolder: values.app ?? null,
    behindProxy: values["behind-proxy"],
    metricsToken: env.METRICS_TOKEN ?? null,
    log,
  });
  log({ what: "listening", port: server.port });
  // For the person at the terminal alone, so not on the stream that a service keeps.
  if (server.code !== null) error(`The code that opens the shop, once: ${server.code}\n`);
  stopWhenAsked(server.stop);
  return FINE;
}
