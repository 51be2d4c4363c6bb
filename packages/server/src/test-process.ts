import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";

// The server as a process of its own, for the tests that need several or kill it.

const MAIN = join(import.meta.dirname, "run/main.ts");
const running = new Set<ChildProcess>();
// A run that fails leaves no server behind.
process.once("exit", () => {
  for (const child of running) child.kill("SIGKILL");
});

export interface TestProcess {
  /** Where it answers, such as http://localhost:4173/api/v1. */
  readonly base: string;
  /** The one-time code of a first start; null on a start that found its shop. */
  readonly code: string | null;
  /** Ends it, and waits for its end. */
  readonly end: (how: "SIGTERM" | "SIGKILL") => Promise<void>;
}

export interface TestProcessOptions {
  readonly data: string;
  readonly databaseUrl?: string | undefined;
  /** 0: any that is free. */
  readonly port?: number;
  /** There is no shop yet: waits for the code as well. */
  readonly first: boolean;
}

/** Starts one and waits until it answers. */
export function startProcess({
  data,
  databaseUrl,
  port = 0,
  first,
}: TestProcessOptions): Promise<TestProcess> {
  const child = spawn(process.execPath, ["--import", "tsx", MAIN, "--port", String(port), "--data", data], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, DATABASE_URL: databaseUrl ?? "" },
  });
  running.add(child);
  const end = (how: "SIGTERM" | "SIGKILL"): Promise<void> =>
    new Promise((resolve) => {
      running.delete(child);
      child.removeAllListeners("exit");
      if (child.exitCode !== null || child.signalCode !== null) return resolve();
      child.once("exit", () => resolve());
      child.kill(how);
    });
  return new Promise((resolve, reject) => {
    let said = "";
    let told = "";
    const look = () => {
      const at = /"what":"listening","port":(\d+)/.exec(said)?.[1];
      const code = /once: (\S+)\s/.exec(told)?.[1] ?? null;
      if (at !== undefined && (!first || code !== null)) {
        resolve({ base: `http://localhost:${at}/api/v1`, code, end });
      }
    };
    child.stderr.on("data", (chunk: Buffer) => {
      if (told.length < 10_000) told += chunk;
      look();
    });
    child.once("exit", () => reject(new Error(`The server ended by itself:\n${said}${told}`)));
    child.stdout.on("data", (chunk: Buffer) => {
      if (said.length < 10_000) said += chunk;
      look();
    });
  });
}
