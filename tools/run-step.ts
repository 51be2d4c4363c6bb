import { spawn } from "node:child_process";
import { join } from "node:path";

/** The repository, wherever it lies. */
export const ROOT = join(import.meta.dirname, "..");

/** What one command gave. */
export interface StepResult {
  readonly name: string;
  readonly ok: boolean;
  readonly seconds: number;
  /** Standard output and error, in the order they came. */
  readonly output: string;
}

/** Runs a command of the installed packages and keeps what it prints. A command that is not there fails. */
export function runStep(
  name: string,
  command: string,
  args: readonly string[],
  cwd = ROOT,
): Promise<StepResult> {
  const started = performance.now();
  return new Promise((resolve) => {
    let output = "";
    const keep = (chunk: Buffer) => {
      output += chunk;
    };
    const finish = (ok: boolean) =>
      resolve({ name, ok, seconds: (performance.now() - started) / 1000, output });
    const child = spawn(join(ROOT, "node_modules", ".bin", command), args, {
      cwd,
      env: { ...process.env, NO_COLOR: "1", FORCE_COLOR: "0" },
    });
    child.stdout.on("data", keep);
    child.stderr.on("data", keep);
    child.on("error", (error) => {
      output += `${error.message}. Run npm ci first.\n`;
      finish(false);
    });
    child.on("close", (code) => finish(code === 0));
  });
}
