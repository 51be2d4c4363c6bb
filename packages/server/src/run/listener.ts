import type { Server } from "node:http";
import { createServer } from "node:https";
import type { AddressInfo } from "node:net";
import { serve } from "@hono/node-server";
import type { KeyAndCertificate } from "../lan/certificates.ts";

export interface Door {
  /** 0: any that is free. */
  readonly port: number;
  /** Left out: every address of the machine. */
  readonly host?: string;
  /** Given: https. */
  readonly tls?: KeyAndCertificate;
}

/** A port that answers. */
export interface Listener {
  readonly port: number;
  /** Connections from now on see this certificate; for https alone. */
  readonly useCertificate: (tls: KeyAndCertificate) => void;
  /** Takes no more, lets requests finish for a while. */
  readonly close: () => Promise<void>;
}

const FINISH_MILLISECONDS = 10_000;

const secureContext = ({ key, certificate }: KeyAndCertificate) => ({ key, cert: certificate });

/** Answers requests at a port, with limits on how long they may take to arrive. */
export function listen(
  answer: (request: Request, env: object) => Response | Promise<Response>,
  { port, host, tls }: Door,
): Promise<Listener> {
  return new Promise((resolve, reject) => {
    const server = serve(
      {
        fetch: answer,
        port,
        ...(host === undefined ? {} : { hostname: host }),
        ...(tls === undefined ? {} : { createServer, serverOptions: secureContext(tls) }),
      },
      () => {
        server.off("error", reject);
        resolve({
          port: (server.address() as AddressInfo).port,
          useCertificate: (changed) => {
            if (!("setSecureContext" in server)) throw new RangeError("This port does not speak https");
            server.setSecureContext(secureContext(changed));
          },
          close: async () => {
            const closed = new Promise((done) => server.close(done));
            http.closeIdleConnections();
            const cut = setTimeout(() => http.closeAllConnections(), FINISH_MILLISECONDS);
            await closed;
            clearTimeout(cut);
          },
        });
      },
    );
    const http = server as Server;
    http.headersTimeout = 10_000;
    http.requestTimeout = 60_000;
    http.keepAliveTimeout = 15_000;
    server.once("error", reject);
  });
}
