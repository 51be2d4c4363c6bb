import { accept, type Outcome, refuse } from "@jetwright/core";
import * as z from "zod/mini";

export type BodyReason = "too-large" | "too-deep" | "not-json" | "not-text" | "wrong-fields" | "body-cut-off";

/** Deepest nesting of a JSON body; ours need two. */
const DEPTH = 8;

/**
 * The body of a request, at most so many bytes: reading stops there whatever the length says. A sender that
 * goes away in the middle is refused too.
 */
export async function readBytes(request: Request, limit: number): Promise<Outcome<Uint8Array, BodyReason>> {
  const tooLarge = () =>
    refuse("too-large", `At most ${limit} bytes can be sent at once. Send less at a time.`);
  if (Number(request.headers.get("content-length") ?? 0) > limit) return tooLarge();
  if (request.body === null) return accept(new Uint8Array());
  const pieces: Uint8Array[] = [];
  let size = 0;
  const reader = request.body.getReader();
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) break;
      size += value.length;
      if (size > limit) {
        await reader.cancel().catch(() => undefined);
        return tooLarge();
      }
      pieces.push(value);
    }
  } catch {
    return refuse("body-cut-off", "The request ended before its body did. Send it again.");
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return accept(whole);
}

/** The body as UTF-8 text; half a character is refused, not replaced. */
export async function readText(request: Request, limit: number): Promise<Outcome<string, BodyReason>> {
  const bytes = await readBytes(request, limit);
  if (!bytes.ok) return bytes;
  try {
    return accept(new TextDecoder("utf-8", { fatal: true }).decode(bytes.value));
  } catch {
    return refuse("not-text", "The body is not UTF-8 text.");
  }
}

/** How deep lists and objects stand in one another, without building them. */
function depthOf(text: string): number {
  let depth = 0;
  let deepest = 0;
  let quoted = false;
  for (let i = 0; i < text.length; i++) {
    const letter = text[i];
    if (quoted) {
      if (letter === "\\") i++;
      else if (letter === '"') quoted = false;
    } else if (letter === '"') quoted = true;
    else if (letter === "{" || letter === "[") deepest = Math.max(deepest, ++depth);
    else if (letter === "}" || letter === "]") depth--;
  }
  return deepest;
}

/** A small JSON body of the form that the schema says. */
export async function readJson<T>(
  request: Request,
  schema: z.ZodMiniType<T>,
  limit = 16_384,
): Promise<Outcome<T, BodyReason>> {
  const text = await readText(request, limit);
  if (!text.ok) return text;
  if (depthOf(text.value) > DEPTH)
    return refuse("too-deep", `The body is nested deeper than ${DEPTH} levels.`);
  let value: unknown;
  try {
    value = JSON.parse(text.value);
  } catch {
    return refuse("not-json", "The body is not well-formed JSON.");
  }
  const read = z.safeParse(schema, value);
  if (read.success) return accept(read.data);
  const where = read.error.issues.map(({ path }) => path.join(".") || "the body").join(", ");
  return refuse("wrong-fields", `These do not have the form they need: ${where}.`);
}
