import { ANSWERS } from "./answers/all.ts";
import { coreWords } from "./catalogues.ts";
import type { FromEngine, ToEngine } from "./protocol.ts";
import { refusalsInWords } from "./refusals-in-words.ts";
import { learnSentences } from "./sentences.ts";
import { EngineState } from "./state.ts";

/** Answers the page's messages, one log at a time; records are in before whatever is asked after them. */
export function answering(): (message: ToEngine) => Promise<FromEngine | null> {
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
        const answer = refusalsInWords(await reckon(state, message.given), message.language);
        return { ticket: message.ticket, ok: true, answer };
      }
    }
  }

  return async (message) => {
    try {
      return await answer(message);
    } catch (error) {
      const ticket = "ticket" in message ? message.ticket : -1;
      const bug = error instanceof Error ? `${error.message}\n${error.stack ?? ""}` : String(error);
      return { ticket, ok: false, bug };
    }
  };
}
