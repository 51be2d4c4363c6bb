import type { AnyKind } from "./kind.ts";
import { KINDS } from "./kinds/all.ts";

/** The kinds by name. */
export const KINDS_BY_NAME: ReadonlyMap<string, AnyKind> = new Map(KINDS.map((kind) => [kind.kind, kind]));
