import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startTestPostgres } from "../src/test-postgres.ts";
import { startProcess, type TestProcess } from "../src/test-process.ts";
import { lineOf } from "../src/test-records.ts";

/**
 * Kills the server with SIGKILL while four devices push, again and again, and looks each time whether every record
 * that it called taken is still there, once, as it was sent. Arguments: how often (20), and sqlite, postgres, or
 * postgres-stops, where the database is cut down and started again in place of the server. Ports 4292 to 4294.
 */
const rounds = Number(process.argv[2] ?? 20);
const kind = process.argv[3] ?? "sqlite";
const PORT = { sqlite: 4292, postgres: 4293, "postgres-stops": 4294 }[kind];
if (PORT === undefined) throw new RangeError(`The kind is sqlite, postgres or postgres-stops, not ${kind}`);
const URL_OF = `http://localhost:${PORT}/api/v1`;
const DEVICES = 4;

const data = mkdtempSync(join(tmpdir(), "jetwright-kill-server-"));
const postgres = kind === "sqlite" ? null : await startTestPostgres();
if (kind !== "sqlite" && postgres === null)
  throw new Error("This needs PostgreSQL: apt-get install postgresql");
const databaseUrl = postgres?.freshUrl();

const start = (first: boolean): Promise<TestProcess> =>
  startProcess({ data, databaseUrl, port: PORT, first });

let token = "";
const call = (method: string, path: string, body?: string): Promise<Response> =>
  fetch(`${URL_OF}/${path}`, {
    method,
    headers: { authorization: `Bearer ${token}` },
    signal: AbortSignal.timeout(15_000),
    ...(body === undefined ? {} : { body }),
  });

const after = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

const taken = new Map<string, string>();
let unanswered = 0;
let number = 0;
let cursor = "";
const seen = new Map<string, string>();
let twice = 0;

/** Pushes until told to stop; a batch whose answer was lost is sent again first. */
async function push(device: number, stopped: () => boolean): Promise<void> {
  let batch: { id: string; line: string }[] = [];
  while (!stopped()) {
    if (batch.length === 0) {
      batch = Array.from({ length: 1 + (number % 20) }, () => {
        const id = `d${device}-${++number}`;
        return { id, line: lineOf(id, { text: `written before a kill, number ${number}` }) };
      });
    }
    try {
      const answer = await call("POST", "records", batch.map(({ line }) => line).join("\n"));
      if (answer.ok && ((await answer.json()) as { refused: unknown[] }).refused.length === 0) {
        for (const { id, line } of batch) taken.set(id, line);
        batch = [];
      } else await after(100);
    } catch {
      unanswered++;
      await after(50);
    }
  }
}

async function readOn(): Promise<void> {
  for (let more = true; more; ) {
    const answer = await call("GET", `records?after=${encodeURIComponent(cursor)}`);
    const text = await answer.text();
    if (!answer.ok) throw new Error(`Reading the log was answered ${answer.status}: ${text.slice(0, 300)}`);
    const [head, ...lines] = text.trimEnd().split("\n");
    const page = JSON.parse(head!) as { cursor: string; more: boolean; restart: string | null };
    if (page.restart !== null) throw new Error(`The log began anew: ${page.restart}`);
    for (const line of lines) {
      const { id } = JSON.parse(line) as { id: string };
      if (seen.has(id)) twice++;
      seen.set(id, line);
    }
    ({ cursor, more } = page);
  }
}

let running = await start(true);
const setup = { code: running.code, shop: "Tarn End", person: "Mara", device: "bench", give: "token" };
const made = await call("POST", "setup", JSON.stringify(setup));
if (!made.ok) throw new Error(`The shop was not made, ${made.status}: ${await made.text()}`);
({ token } = (await made.json()) as { token: string });
let lost = 0;
let failedRounds = 0;
for (let round = 1; round <= rounds; round++) {
  let stop = false;
  const work = Array.from({ length: DEVICES }, (_, device) => push(device, () => stop));
  // However slow the machine: something was taken before the kill, and pushes are under way when it comes.
  const before = taken.size;
  for (let waits = 0; taken.size === before && waits < 300; waits++) await after(50);
  await after(100 + ((round * 97) % 400));
  if (kind === "postgres-stops") {
    await postgres!.stop("immediate");
    await after(200);
    await postgres!.start();
    await after(300);
    stop = true;
    await Promise.all(work);
  } else {
    const killed = running.end("SIGKILL");
    stop = true;
    await Promise.all([killed, ...work]);
    running = await start(false);
  }
  await readOn();
  const missing = [...taken].filter(([id, line]) => seen.get(id) !== line);
  lost += missing.length;
  if (missing.length > 0) failedRounds++;
  for (const [id] of missing) taken.delete(id);
  if (round % 20 === 0) console.log(`after ${round}: ${taken.size} taken, ${lost} lost, ${twice} twice`);
}
await running.end("SIGKILL");
await postgres?.remove();
rmSync(data, { recursive: true, force: true });
console.log(
  `${kind}: ${rounds} kills, ${taken.size} records called taken, ${unanswered} requests without an answer, ${lost} lost, ${twice} twice`,
);
const failed = failedRounds + (twice > 0 ? 1 : 0) + (taken.size === 0 ? 1 : 0);
console.log(`${rounds - failedRounds} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
