import { answering } from "./answering.ts";
import type { ToEngine } from "./protocol.ts";

// The worker: every formula runs here, off the page's own thread.

const answer = answering();

self.onmessage = async ({ data }: MessageEvent<ToEngine>) => {
  const reply = await answer(data);
  if (reply !== null) self.postMessage(reply);
};
