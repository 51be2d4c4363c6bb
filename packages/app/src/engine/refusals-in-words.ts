import type { Refusal } from "@jetwright/core";
import { whyRefused } from "./sentences.ts";

const isRefusal = (answer: unknown): answer is Refusal =>
  typeof answer === "object" &&
  answer !== null &&
  "ok" in answer &&
  answer.ok === false &&
  "reason" in answer;

const inWords = (answer: unknown, language: string): unknown =>
  isRefusal(answer) ? { ...answer, detail: whyRefused(language, answer) } : answer;

/** An answer whose refusal, or those in its own fields, speak the language: whatever screen shows them need not know. */
export function refusalsInWords(answer: unknown, language: string): unknown {
  if (isRefusal(answer)) return inWords(answer, language);
  if (typeof answer !== "object" || answer === null || !Object.values(answer).some(isRefusal)) return answer;
  if (Array.isArray(answer)) return answer.map((one) => inWords(one, language));
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, inWords(value, language)]));
}
