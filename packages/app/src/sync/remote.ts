import type { NotTaken, PulledPage, Remote } from "./sync-once.ts";

/** The server answered, but not with what was asked for. */
export class Refused extends Error {
  readonly status: number;
  readonly reason: string;
  constructor(status: number, reason: string, detail: string) {
    super(detail);
    this.status = status;
    this.reason = reason;
  }
}

const PATIENCE = 30_000;

/**
 * Asks the server that the page came from. The cookie that signs this device in goes with it.
 * @param patience milliseconds until it counts as out of reach
 */
export async function ask(
  method: string,
  path: string,
  body?: string,
  patience = PATIENCE,
): Promise<Response> {
  const answer = await fetch(`/api/v1/${path}`, {
    method,
    headers: { "x-jetwright": "1" },
    credentials: "same-origin",
    cache: "no-store",
    signal: AbortSignal.timeout(patience),
    ...(body === undefined ? {} : { body }),
  });
  if (answer.ok) return answer;
  const said = (await answer.json().catch(() => ({}))) as { reason?: string; detail?: string };
  throw new Refused(answer.status, said.reason ?? "no-server", said.detail ?? `${answer.status}`);
}

export const askJson = async <T>(method: string, path: string, body?: object): Promise<T> =>
  (await (await ask(method, path, body === undefined ? undefined : JSON.stringify(body))).json()) as T;

/** The shop's log at the server that the page came from. */
export const remote: Remote = {
  push: async (lines) => {
    const answer = await ask("POST", "records", lines.join("\n"));
    const { refused } = (await answer.json()) as { refused: (NotTaken & { line: number })[] };
    return refused;
  },
  pull: async (cursor) => {
    const answer = await ask("GET", `records?after=${encodeURIComponent(cursor)}`);
    const [head, ...lines] = (await answer.text()).trimEnd().split("\n");
    return { ...(JSON.parse(head!) as Omit<PulledPage, "lines">), lines };
  },
};
