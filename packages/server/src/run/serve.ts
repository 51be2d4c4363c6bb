import { parseArgs } from "node:util";
import { accept } from "@jetwright/core";
import { startOnLan } from "../lan/lan.ts";
import { openDatabase, stopWhenAsked } from "./open-database.ts";
import { startServer } from "./server.ts";
import { BAD_INPUT, FINE, type ServerCommand, type Terminal } from "./terminal.ts";

const MANUAL = `
jetwright serve [--port 4173] [--host localhost] [--data FOLDER] [--app FOLDER] [--behind-proxy]
                [--lan] [--lan-port 4443] [--trust-port 4480]

Keeps a shop's log and serves the built app (--app dist/app) until it is asked to stop. What
happens goes to the standard output, one JSON object a line. Secrets come by the environment:
DATABASE_URL, METRICS_TOKEN. docs/server.md says more.

--lan serves the phones of the shop's own network too: the app with https (--lan-port), under
certificates that it makes and keeps in the data folder, and a page (--trust-port) with the
steps by which a phone trusts them. Browsers give the microphone, and opening without a
network, to such pages alone.
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
      lan: { type: "boolean", default: false },
      "lan-port": { type: "string", default: "4443" },
      "trust-port": { type: "string", default: "4480" },
    },
  });
  const refuse = (text: string): number => {
    error(`jetwright: ${text}\n`);
    return BAD_INPUT;
  };
  if (values.lan && values["behind-proxy"]) {
    return refuse("Give --lan or --behind-proxy: a proxy has a certificate of its own.");
  }
  for (const flag of ["port", "lan-port", "trust-port"] as const) {
    // 0: any that is free.
    const asked = Number(values[flag]);
    if (!Number.isInteger(asked) || asked < 0 || asked > 65535) {
      return refuse(`--${flag} takes a whole number from 0 to 65535, got "${values[flag]}".`);
    }
  }
  const log = (fields: Readonly<Record<string, unknown>>): void =>
    out(`${JSON.stringify({ at: new Date().toISOString(), ...fields })}\n`);
  const options = {
    database: openDatabase(env, values.data, log),
    port: Number(values.port),
    host: values.host,
    appFolder: values.app ?? null,
    behindProxy: values["behind-proxy"],
    metricsToken: env.METRICS_TOKEN ?? null,
    log,
  };
  const started = values.lan
    ? await startOnLan(options, {
        dataFolder: values.data,
        port: Number(values["lan-port"]),
        trustPort: Number(values["trust-port"]),
      })
    : accept({ ...(await startServer(options)), trustPort: null, told: "" });
  if (!started.ok) return refuse(started.detail);
  const { port, secure, trustPort, told, code, stop } = started.value;
  log({ what: "listening", port, ...(secure === null ? {} : { securePort: secure.port, trustPort }) });
  error(told);
  // For the person at the terminal alone, so not on the stream that a service keeps.
  if (code !== null) error(`The code that opens the shop, once: ${code}\n`);
  stopWhenAsked(stop);
  return FINE;
}
