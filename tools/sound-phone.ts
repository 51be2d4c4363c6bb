import { existsSync } from "node:fs";
import { join } from "node:path";
import { type CDPSession, chromium } from "@playwright/test";
import { build } from "vite";
import { take } from "../packages/sound-lab/src/index.ts";

/**
 * How long a browser as slow as a phone takes to read a clip of 30 s: Chromium with its processor throttled six times,
 * on the page's own thread and in a worker. Prints JSON; `null` where no browser is installed. The same reading without
 * the throttle tells by how much it really slowed either thread.
 */
const SLOWER = 6;
const SECONDS = 30;
const RUNS = 5;

export interface PhoneTimes {
  /** Seconds for the clip, the best of the runs. */
  readonly plain: number;
  readonly page: number;
  readonly worker: number;
  /** Times longer it took under the throttle. */
  readonly pageSlowed: number;
  readonly workerSlowed: number;
  /** What the worker answered to the throttle: "taken", or why not. */
  readonly workerSaid: string;
}

const browserPath = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/google-chrome"].find(
  (path) => path !== undefined && existsSync(path),
);
async function bundle(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: "error",
    build: {
      write: false,
      lib: { entry: join(import.meta.dirname, "sound-phone-page.ts"), formats: ["iife"], name: "sound" },
    },
  });
  const [first] = Array.isArray(made) ? made : [made];
  if (first === undefined || !("output" in first)) throw new Error("The bundle was not made");
  return first.output[0].code;
}

/** The clip as base64 of 16-bit samples. */
function clip(): { readonly data: string; readonly rate: number } {
  const { samples, rate } = take("snaps", 4760, { snr: 15 });
  const whole = Int16Array.from({ length: SECONDS * rate }, (_, i) =>
    Math.round(samples[i % samples.length]! * 32767),
  );
  return { data: Buffer.from(whole.buffer).toString("base64"), rate };
}

/** Run in the page and in the worker: reads the clip with its picture; milliseconds, the best of some. */
const TIMER = `
function timed(data, rate, runs) {
  const bytes = Uint8Array.from(atob(data), (c) => c.charCodeAt(0));
  const samples = Float32Array.from(new Int16Array(bytes.buffer), (v) => v / 32768);
  let least = Infinity;
  for (let run = 0; run < runs; run++) {
    const from = performance.now();
    const heard = sound.listen(samples, rate, { strokes: 2, cylinders: 1, idleHint: null }, { pictures: true });
    if (!heard.ok) throw new Error(heard.reason);
    least = Math.min(least, performance.now() - from);
  }
  return least;
}
let worker = null;
function startWorker(code) {
  const source = code + "\\nonmessage = ({ data }) => postMessage(timed(...data));";
  worker = new Worker(URL.createObjectURL(new Blob([source])));
}
const inWorker = (...given) => new Promise((done) => {
  worker.onmessage = ({ data }) => done(data);
  worker.postMessage(given);
});`;

async function measure(executablePath: string): Promise<PhoneTimes> {
  const code = `${await bundle()}\n${TIMER}`;
  const { data, rate } = clip();
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
  const page = await browser.newPage();
  await page.addScriptTag({ content: code });
  await page.evaluate(`startWorker(${JSON.stringify(code)})`);
  const given = `${JSON.stringify(data)}, ${rate}, ${RUNS}`;
  const onPage = (): Promise<number> => page.evaluate(`timed(${given})`);
  const inWorker = (): Promise<number> => page.evaluate(`inWorker(${given})`);
  const free = { page: await onPage(), worker: await inWorker() };
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER });
  const workerSaid = await throttleWorker(await browser.newBrowserCDPSession());
  const slow = { page: await onPage(), worker: await inWorker() };
  await browser.close();
  return {
    plain: free.page / 1000,
    page: slow.page / 1000,
    worker: slow.worker / 1000,
    pageSlowed: slow.page / free.page,
    workerSlowed: slow.worker / free.worker,
    workerSaid,
  };
}

/** Asks the worker itself to be slower; gives what it answered. */
async function throttleWorker(session: CDPSession): Promise<string> {
  const { targetInfos } = await session.send("Target.getTargets", { filter: [{ type: "worker" }] });
  const worker = targetInfos[0];
  if (worker === undefined) return "no worker to be reached";
  const { sessionId } = await session.send("Target.attachToTarget", { targetId: worker.targetId });
  const answer = new Promise<string>((done) => {
    session.on("Target.receivedMessageFromTarget", ({ message }) => {
      const { error } = JSON.parse(message) as { error?: { message: string } };
      done(error === undefined ? "taken" : error.message);
    });
  });
  await session.send("Target.sendMessageToTarget", {
    sessionId,
    message: JSON.stringify({ id: 1, method: "Emulation.setCPUThrottlingRate", params: { rate: SLOWER } }),
  });
  return answer;
}

console.log(JSON.stringify(browserPath === undefined ? null : await measure(browserPath)));
