import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startTestPostgres } from "../src/test-postgres.ts";
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
const MAIN = join(import.meta.dirname, "../src/run/main.ts");
const URL_OF = `http://localhost:${PORT}/api/v1`;
const DEVICES = 4;

const data = mkdtempSync(join(tmpdir(), "jetwright-kill-server-"));
const postgres = kind === "sqlite" ? null : await startTestPostgres();
if (kind !== "sqlite" && postgres === null)
  throw new Error("This needs PostgreSQL: apt-get install postgresql");
const databaseUrl = postgres?.freshUrl();

interface Running {
  readonly child: ChildProcess;
  readonly code: string | null;
}

function start(): Promise<Running> {
  const child = spawn(process.execPath, ["--import", "tsx", MAIN, "--port", String(PORT), "--data", data], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, ...(databaseUrl === undefined ? {} : { DATABASE_URL: databaseUrl }) },
  });
  return new Promise((resolve, reject) => {
    let said = "";
    let told = "";
    child.stderr.on("data", (chunk: Buffer) => {
      told += chunk;
    });
    child.once("exit", () => reject(new Error(`The server ended by itself:\n${said}${told}`)));
    child.stdout.on("data", (chunk: Buffer) => {
      if (said.length < 10_000) said += chunk;
      if (!said.includes('"listening"')) return;
      // The code is printed just after; a start that finds a shop has none.
      setTimeout(() => resolve({ child, code: /once: (\S+)/.exec(told)?.[1] ?? null }), 50);
    });
  });
}

const kill = (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => {
    child.removeAllListeners("exit");
    child.once("exit", () => resolve());
    child.kill("SIGKILL");
  });

let token = "";
const call = (method: string, path: string, body?: string): Promise<Response> =>
  fetch(`${URL_OF}/${path}`, {
    method,
    headers: { authorization: `Bearer ${token}` },
    signal: AbortSignal.timeout(15_000),
    ...(body === undefined ? {} : { body }),
  });

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
      } else await new Promise((resolve) => setTimeout(resolve, 100));
    } catch {
      unanswered++;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
}

async function readOn(): Promise<void> {
  for (let more = true; more; ) {
    const [head, ...lines] = (await (await call("GET", `records?after=${encodeURIComponent(cursor)}`)).text())
      .trimEnd()
      .split("\n");
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

let running = await start();
const setup = { code: running.code, shop: "Tarn End", person: "Mara", device: "bench", give: "token" };
({ token } = (await (await call("POST", "setup", JSON.stringify(setup))).json()) as { token: string });
let lost = 0;
let failedRounds = 0;
for (let round = 1; round <= rounds; round++) {
  let stop = false;
  const work = Array.from({ length: DEVICES }, (_, device) => push(device, () => stop));
  await new Promise((resolve) => setTimeout(resolve, 150 + ((round * 97) % 400)));
  if (kind === "postgres-stops") {
    await postgres!.stop("immediate");
    await new Promise((resolve) => setTimeout(resolve, 200));
    await postgres!.start();
    await new Promise((resolve) => setTimeout(resolve, 300));
    stop = true;
    await Promise.all(work);
  } else {
    const killed = kill(running.child);
    stop = true;
    await Promise.all([killed, ...work]);
    running = await start();
  }
  await readOn();
  const missing = [...taken].filter(([id, line]) => seen.get(id) !== line);
  lost += missing.length;
  if (missing.length > 0) failedRounds++;
  for (const [id] of missing) taken.delete(id);
}
await kill(running.child);
await postgres?.remove();
rmSync(data, { recursive: true, force: true });
console.log(
  `${kind}: ${rounds} kills, ${taken.size} records called taken, ${unanswered} requests without an answer, ${lost} lost, ${twice} twice`,
);
const failed = failedRounds + (twice > 0 ? 1 : 0) + (taken.size === 0 ? 1 : 0);
console.log(`${rounds - failedRounds} passed, ${failed} failed`);
process.exitCode = failed > 0 ? 1 : 0;
