import type { CDPSession, Page } from "@playwright/test";

interface TraceEvent {
  readonly name: string;
  readonly ph: string;
  readonly pid: number;
  readonly tid: number;
  /** Processor time of its own thread, microseconds. */
  readonly tdur?: number;
}

/** A mark the page sets itself, by which its own thread is known among those of the browser. */
const MARK = "tasks-from-here";

/**
 * The longest task of the page's thread from now until the result is called, in milliseconds of its own processor
 * time: however much else the machine does, that time is the page's.
 */
export async function longestTask(page: Page): Promise<() => Promise<number>> {
  const browser = page.context().browser();
  if (browser === null) throw new RangeError("A page of no browser cannot be traced");
  const session: CDPSession = await browser.newBrowserCDPSession();
  const events: TraceEvent[] = [];
  session.on("Tracing.dataCollected", ({ value }) => events.push(...(value as unknown as TraceEvent[])));
  await session.send("Tracing.start", {
    transferMode: "ReportEvents",
    traceConfig: { includedCategories: ["toplevel", "blink.user_timing"] },
  });
  await page.evaluate((mark) => performance.mark(mark), MARK);
  return async () => {
    const complete = new Promise((resolve) => session.once("Tracing.tracingComplete", resolve));
    await session.send("Tracing.end");
    await complete;
    await session.detach();
    const own = events.find(({ name }) => name === MARK);
    const tasks = events.filter(
      ({ name, ph, pid, tid }) =>
        ph === "X" && name.endsWith("RunTask") && pid === own?.pid && tid === own.tid,
    );
    if (tasks.length === 0) throw new RangeError("The trace holds no task of the page");
    return Math.max(...tasks.map(({ tdur }) => tdur ?? 0)) / 1000;
  };
}
