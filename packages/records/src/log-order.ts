import type { Envelope } from "./entry.ts";
import { compareIds } from "./record-id.ts";

/** The order of the story: by when it happened, then by id. It does not depend on the order of arrival. */
export const compareEntries = (a: Pick<Envelope, "at" | "id">, b: Pick<Envelope, "at" | "id">): number =>
  a.at - b.at || compareIds(a.id, b.id);
