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
/** Asked to wait no longer than this, milliseconds, it waits and asks again; so many times. */
const SHORT_WAIT = 2000;
const TRIES = 5;

/**
 * Asks a server; rejects with `Refused` when it answers otherwise.
 * @param patience milliseconds until it counts as out of reach
 */
export type Ask = (
  method: string,
  path: string,
  body?: string | Blob,
  patience?: number,
  headers?: Readonly<Record<string, string>>,
) => Promise<Response>;

/** Asks the server at an address, with headers that go with each request. */
export const askAt =
  (base: string, always: Readonly<Record<string, string>>): Ask =>
  async (method, path, body, patience = PATIENCE, headers = {}) => {
    const once = () =>
      fetch(`${base}/api/v1/${path}`, {
        method,
        headers: { ...always, ...headers },
        credentials: "same-origin",
        cache: "no-store",
        signal: AbortSignal.timeout(patience),
        ...(body === undefined ? {} : { body }),
      });
    let answer = await once();
    for (let tries = 1; tries < TRIES && answer.status === 429; tries++) {
      const wait = Number(answer.headers.get("retry-after")) * 1000;
      // A device that sends many pictures at once is slowed down, and goes on.
      if (!(wait <= SHORT_WAIT)) break;
      await new Promise((done) => setTimeout(done, wait));
      answer = await once();
    }
    if (answer.ok) return answer;
    const said = (await answer.json().catch(() => ({}))) as { reason?: string; detail?: string };
    throw new Refused(answer.status, said.reason ?? "no-server", said.detail ?? `${answer.status}`);
  };

/** Asks the server that the page came from. The cookie that signs this device in goes with it. */
export const ask = askAt("", { "x-jetwright": "1" });

export const askJson = async <T>(method: string, path: string, body?: object): Promise<T> =>
  (await (await ask(method, path, body === undefined ? undefined : JSON.stringify(body))).json()) as T;

/** The shop's log at a server. */
export const remoteBy = (asking: Ask): Remote => ({
  push: async (lines) => {
    const answer = await asking("POST", "records", lines.join("\n"));
    const { refused } = (await answer.json()) as { refused: (NotTaken & { line: number })[] };
    return refused;
  },
  pull: async (cursor) => {
    const answer = await asking("GET", `records?after=${encodeURIComponent(cursor)}`);
    const [head, ...lines] = (await answer.text()).trimEnd().split("\n");
    return { ...(JSON.parse(head!) as Omit<PulledPage, "lines">), lines };
  },
});
