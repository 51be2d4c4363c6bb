import type { Refusal } from "@jetwright/core";

const HEADERS = { "content-type": "application/json; charset=utf-8", "cache-control": "no-store" } as const;

export const json = (value: object, status = 200, headers: Record<string, string> = {}): Response =>
  new Response(JSON.stringify(value), { status, headers: { ...HEADERS, ...headers } });

/** A refusal with its word for programs and its sentence for people. */
export const refused = (
  status: number,
  reason: string,
  detail: string,
  headers: Record<string, string> = {},
): Response => json({ reason, detail }, status, headers);

const STATUS: Readonly<Record<string, number>> = {
  "bad-code": 403,
  "too-large": 413,
  "too-deep": 400,
  "not-json": 400,
  "not-text": 400,
  "wrong-fields": 400,
  "no-such-person": 404,
  "body-cut-off": 400,
  "not-named": 404,
  "wrong-offset": 409,
  "other-content": 422,
  "shop-full": 507,
};

/** An Outcome that is none, as an answer. */
export const refusal = ({ reason, detail }: Refusal): Response =>
  refused(STATUS[reason] ?? 400, reason, detail);
