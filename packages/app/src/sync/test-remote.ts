import type { PulledPage, Remote } from "./sync-once.ts";

/** The server at an address, as the app's `remote` speaks with the one that the page came from. */
export function remoteAt(base: string, token: string): Remote {
  const call = async (method: string, path: string, body?: string): Promise<Response> => {
    const answer = await fetch(`${base}/api/v1/${path}`, {
      method,
      headers: { authorization: `Bearer ${token}` },
      signal: AbortSignal.timeout(10_000),
      ...(body === undefined ? {} : { body }),
    });
    if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
    return answer;
  };
  return {
    push: async (lines) => (await (await call("POST", "records", lines.join("\n"))).json()).refused,
    pull: async (cursor) => {
      const answer = await call("GET", `records?after=${encodeURIComponent(cursor)}`);
      const [head, ...lines] = (await answer.text()).trimEnd().split("\n");
      return { ...(JSON.parse(head!) as Omit<PulledPage, "lines">), lines };
    },
  };
}
