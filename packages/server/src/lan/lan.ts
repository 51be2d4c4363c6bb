import { hostname, networkInterfaces } from "node:os";
import { join } from "node:path";
import { accept, type Outcome } from "@jetwright/core";
import { listen } from "../run/listener.ts";
import { type RunningServer, type ServerOptions, startServer } from "../run/server.ts";
import { certificatesIn } from "./certificate-folder.ts";
import { addressesFor, isOnNetwork, type LanNames, lanNames } from "./lan-names.ts";
import { lanText } from "./lan-text.ts";
import { answerTrust } from "./trust-page.ts";

export interface LanOptions {
  readonly dataFolder: string;
  /** Where the app answers with https. */
  readonly port: number;
  /** Where the page answers by which a phone comes to trust it. */
  readonly trustPort: number;
  /** What the machine is called now. */
  readonly names?: () => LanNames;
  readonly now?: () => number;
}

/** A server that the shop's own network reaches too. */
export interface LanServer extends RunningServer {
  readonly trustPort: number;
  /** For the person at the terminal: addresses, a picture for a camera, the fingerprint. */
  readonly told: string;
  /** Looks whether the machine's names changed or its certificate nears its end, as the server does every minute. */
  readonly look: () => Promise<void>;
}

const FOLDER = "lan";
const LOOK_MILLISECONDS = 60_000;

/**
 * Starts the server with https beside, under certificates that are read or made in the data folder, and with the page
 * for phones. What cannot be used of the certificates is refused before anything answers.
 */
export async function startOnLan(
  options: ServerOptions,
  { dataFolder, port, trustPort, names: namesNow = ownNames, now = Date.now }: LanOptions,
): Promise<Outcome<LanServer, "certificate-file">> {
  const [machine = ""] = hostname().split(".");
  const find = (names: LanNames) => certificatesIn(join(dataFolder, FOLDER), names, machine, now());
  let names = namesNow();
  const first = await find(names);
  if (!first.ok) {
    await options.database.close();
    return first;
  }
  let certificates = first.value;
  let securePort = port;
  const server = await startServer({
    ...options,
    secure: { port, tls: certificates.server },
    openAt: () => (isOnNetwork(names) ? (addressesFor(names, "https", securePort)[0] ?? null) : null),
  });
  const { secure } = server;
  if (secure === null) throw new RangeError("A server that was given a secure port opened none");
  securePort = secure.port;

  const answer = (request: Request) => answerTrust(request, { certificates, names, securePort });
  const page = await listen(answer, { port: trustPort }).catch(async (error: unknown) => {
    await server.stop();
    throw error;
  });
  const look = async (): Promise<void> => {
    const found = namesNow();
    const fresh = await find(found);
    if (!fresh.ok) return options.log({ what: "certificate", trouble: fresh.reason, why: fresh.detail });
    names = found;
    certificates = fresh.value;
    if (!certificates.renewed) return;
    secure.useCertificate(certificates.server);
    options.log({ what: "certificate", renewed: true, names: [...names.dns, ...names.ip] });
  };
  const timer = setInterval(() => {
    look().catch((error: unknown) => options.log({ what: "certificate", why: String(error) }));
  }, LOOK_MILLISECONDS);
  timer.unref();
  return accept({
    ...server,
    trustPort: page.port,
    told: lanText(certificates, names, securePort, page.port),
    look,
    stop: async () => {
      clearInterval(timer);
      await Promise.all([page.close(), server.stop()]);
    },
  });
}

const ownNames = (): LanNames => lanNames(networkInterfaces(), hostname());
