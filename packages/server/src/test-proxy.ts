import { connect, createServer, type Socket } from "node:net";

// A proxy for the tests that cuts connections in the middle of what goes through them.

export interface CuttingProxy {
  readonly port: number;
  /** How many connections it has cut. */
  readonly cuts: () => number;
  readonly stop: () => Promise<void>;
}

/**
 * Passes bytes on to a port of this machine. Each new connection takes the next limit: it is cut without a word when
 * so many bytes went to the server (`up`) or came back (`down`).
 */
export async function cuttingProxy(
  target: number,
  next: () => { readonly up: number; readonly down: number },
): Promise<CuttingProxy> {
  const open = new Set<Socket>();
  let cuts = 0;
  const server = createServer((client) => {
    const limit = next();
    const upstream = connect(target, "localhost");
    const end = () => {
      client.destroy();
      upstream.destroy();
    };
    const pass = (from: Socket, to: Socket, most: number) => {
      let left = most;
      open.add(from);
      from.on("data", (bytes: Buffer) => {
        if (bytes.length < left) {
          left -= bytes.length;
          to.write(bytes);
          return;
        }
        cuts++;
        // What goes just before the cut still arrives.
        to.write(bytes.subarray(0, left), () => end());
        from.pause();
      });
      from.on("error", end);
      from.on("close", () => {
        open.delete(from);
        end();
      });
    };
    pass(client, upstream, limit.up);
    pass(upstream, client, limit.down);
  });
  await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
  return {
    port: (server.address() as { port: number }).port,
    cuts: () => cuts,
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        for (const socket of open) socket.destroy();
      }),
  };
}
