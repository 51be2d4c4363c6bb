import type * as z from "zod/mini";
import type { JsonObject } from "./json.ts";
import type { Flaw } from "./problem.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** Turns the body of one version into that of the next. It must take any object and may throw on nonsense. */
export type Upcaster = (body: JsonObject) => JsonObject;

/** What a body says once its words have been looked up: the part that counts, and what was left out of it. */
export interface Settled<Body> {
  /** Null when nothing of the record can count. */
  readonly body: Body | null;
  readonly flaws: readonly Flaw[];
}

/** One kind of record: its name, newest version, the shape of its body and how older bodies are read. */
export interface KindOf<Name extends string, Schema extends z.ZodMiniType> {
  readonly kind: Name;
  readonly v: number;
  /** Whether the record names a bike: it must, it may, or it makes no sense. */
  readonly bike: "needed" | "allowed" | "never";
  readonly body: Schema;
  /** Fields of the body that hold a person's name, contact or own words, dots between: an erasure empties them. */
  readonly personal: readonly string[];
  /** Upcasters by the version they read; one for every version below `v`. */
  readonly upcasters: Readonly<Record<number, Upcaster>>;
  /** What the schema cannot say: fields that need one another, and words of the core's catalogues. */
  readonly settle?: (body: z.infer<Schema>, words: Vocabulary) => Settled<z.infer<Schema>>;
}

/** Keeps a kind's name and body types while checking its form. */
export const defineKind = <const Name extends string, Schema extends z.ZodMiniType>(
  kind: KindOf<Name, Schema>,
): KindOf<Name, Schema> => kind;

/** A kind whose body type is not known, as tables and the reader hold it. */
// biome-ignore lint/suspicious/noExplicitAny: a table of kinds must forget each body's own type
export type AnyKind = KindOf<string, any>;
