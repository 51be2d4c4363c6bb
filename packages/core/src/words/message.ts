/**
 * Sentences by their code: a text, or a function of the bare figures it names. What is to be said travels as its code with
 * those figures (`MessageOf`), and is put into words by whoever shows it (`worded`).
 */
export type Sentences = Readonly<Record<string, string | ((given: never) => string)>>;

/** Anything a catalogue of sentences can say: `code`, and `given` where the sentence names something. */
export type MessageOf<Table> = {
  [Code in keyof Table]: Table[Code] extends (given: infer Given) => string
    ? { readonly code: Code; readonly given: Given }
    : { readonly code: Code };
}[keyof Table];

/** A message in the words of a catalogue. */
export function worded<Table extends Sentences>(sentences: Table, message: MessageOf<Table>): string {
  const sentence = sentences[message.code] as string | ((given: unknown) => string);
  return typeof sentence === "string" ? sentence : sentence("given" in message ? message.given : undefined);
}
