import { answering } from "./answering.ts";
import { Engine } from "./client.ts";
import type { ToEngine } from "./protocol.ts";

/** The worker in this thread: messages are copied and answered as in a browser, one after the other. */
export function inThisThread(free: () => Promise<void> = async () => {}): Engine {
  const answer = answering();
  const worker = {
    onmessage: (_message: { readonly data: unknown }) => {},
    postMessage: (message: ToEngine) => {
      const copied = structuredClone(message);
      setTimeout(async () => {
        await free();
        const reply = await answer(copied);
        if (reply !== null) worker.onmessage({ data: structuredClone(reply) });
      });
    },
  };
  return new Engine(worker as unknown as Worker);
}
