import { type ChildProcess, spawn } from "node:child_process";
import { join } from "node:path";

const ROOT = join(import.meta.dirname, "../../..");

export interface Ports {
  readonly port: number;
  readonly securePort: number;
  readonly trustPort: number;
}

/** The server on the shop's network, as a process of its own, at ports that are free. */
export function serveLan(data: string): { readonly child: ChildProcess; readonly ports: Promise<Ports> } {
  const ports = ["--port", "0", "--lan-port", "0", "--trust-port", "0"];
  const main = join(ROOT, "packages/server/src/run/main.ts");
  const child = spawn(
    process.execPath,
    ["--import", "tsx", main, "--lan", ...ports, "--data", data, "--app", join(ROOT, "dist/app")],
    { cwd: ROOT, stdio: ["ignore", "pipe", "ignore"], env: { ...process.env, DATABASE_URL: "" } },
  );
  let said = "";
  return {
    child,
    ports: new Promise((resolve, reject) => {
      child.once("exit", () => reject(new Error(`The server ended by itself:\n${said}`)));
      child.stdout?.on("data", (chunk: Buffer) => {
        said += chunk;
        const [line] = /\{[^\n]*"what":"listening"[^\n]*\}/.exec(said) ?? [];
        if (line !== undefined) resolve(JSON.parse(line) as Ports);
      });
    }),
  };
}
