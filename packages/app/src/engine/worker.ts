import { ANSWERS } from "./answers/all.ts";
import { coreWords } from "./catalogues.ts";
import type { FromEngine, ToEngine } from "./protocol.ts";
import { learnSentences } from "./sentences.ts";
import { EngineState } from "./state.ts";

// The worker: every formula runs here, off the page's own thread.

let state = new EngineState();

async function answer(message: ToEngine): Promise<FromEngine | null> {
  switch (message.say) {
    case "forget":
      state = new EngineState();
      return null;
    case "speak":
      await Promise.all([coreWords(message.language), learnSentences(message.language)]);
      return null;
    case "records":
      state.add(message.lines);
      return { ticket: message.ticket, ok: true, answer: null };
    case "ask": {
      const [words] = await Promise.all([coreWords(message.language), learnSentences(message.language)]);
      state.speak(words);
      const reckon = ANSWERS[message.question] as (state: EngineState, given: unknown) => unknown;
      return { ticket: message.ticket, ok: true, answer: await reckon(state, message.given) };
    }
  }
}

self.onmessage = async ({ data }: MessageEvent<ToEngine>) => {
  try {
    const reply = await answer(data);
    if (reply !== null) self.postMessage(reply);
  } catch (error) {
    const ticket = "ticket" in data ? data.ticket : -1;
    const bug = error instanceof Error ? `${error.message}\n${error.stack ?? ""}` : String(error);
    self.postMessage({ ticket, ok: false, bug } satisfies FromEngine);
  }
};
