/** News between the tabs of one browser: which records were just kept. */
export interface Tabs {
  readonly tell: (ids: readonly string[]) => void;
  readonly close: () => void;
}

export function joinTabs(heard: (ids: readonly string[]) => void): Tabs {
  if (typeof BroadcastChannel === "undefined") return { tell: () => {}, close: () => {} };
  const channel = new BroadcastChannel("jetwright-records");
  channel.onmessage = ({ data }: MessageEvent<readonly string[]>) => heard(data);
  return { tell: (ids) => channel.postMessage(ids), close: () => channel.close() };
}
