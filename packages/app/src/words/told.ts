/** The shape of a catalogue: each entry a text, a list or table of texts, or a way to say one from what is given. */
export type Told<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : { readonly [K in keyof T]: Told<T[K]> };
