import { createHash } from "node:crypto";

export type Role = "owner" | "technician" | "rider";
export const ROLES: readonly Role[] = ["owner", "technician", "rider"];

/** What of a shop's log someone may see: all of it, or what is about some bikes. */
export type Scope = { readonly all: true } | { readonly all: false; readonly bikes: readonly string[] };

/** Kinds of records without a bike that a rider's own sheet needs. */
const SHARED_KINDS = ["air-measured", "fuel-used"] as const;

/** Kinds that a rider may write, about own bikes only. */
const RIDER_KINDS = new Set(["ride-reported", "sound-heard", "note", "photo"]);

/** Eight letters that differ when the scope does: a device whose scope changed must begin again. */
export function scopeMark(scope: Scope): string {
  const text = scope.all ? "all" : JSON.stringify([...scope.bikes].sort());
  return createHash("sha256").update(text).digest("hex").slice(0, 8);
}

/** A condition on the table of records, with its parameters, that holds for what the scope sees. */
export function scopeCondition(scope: Scope, listed: string): { sql: string; parameters: string[] } {
  if (scope.all) return { sql: "", parameters: [] };
  const shared = SHARED_KINDS.map(() => "?").join(", ");
  return {
    sql: `AND (bike IN ${listed} OR (bike IS NULL AND kind IN (${shared})))`,
    parameters: [JSON.stringify(scope.bikes), ...SHARED_KINDS],
  };
}

/** Whether someone of this scope may add a record of this kind about this bike. */
export const mayWrite = (scope: Scope, kind: string, bike: string | null): boolean =>
  scope.all || (RIDER_KINDS.has(kind) && bike !== null && scope.bikes.includes(bike));
