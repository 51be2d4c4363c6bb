import { execFileSync, spawn } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

// A PostgreSQL of the tests' own, in a folder of its own, on a socket in that folder: no port, nothing shared.

/** Where the machine keeps PostgreSQL's programs; null where it has none. */
export function postgresPrograms(): string | null {
  const debian = "/usr/lib/postgresql";
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const places = [
    ...versions.map((version) => join(debian, version, "bin")),
    ...(process.env.PATH ?? "").split(":"),
  ];
  return (
    places.find((place) => existsSync(join(place, "initdb")) && existsSync(join(place, "postgres"))) ?? null
  );
}

export interface TestPostgres {
  /** A fresh, empty database. */
  readonly freshUrl: () => string;
  /** Stops the server: at once ("immediate", as by a lost machine) or after its clients' work ("fast"). */
  readonly stop: (how: "fast" | "immediate") => Promise<void>;
  readonly start: () => Promise<void>;
  readonly remove: () => Promise<void>;
}

/** PostgreSQL refuses to run as root; there it runs as Debian's user for it. */
function identity(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (flag: string) => Number(execFileSync("id", [flag, "postgres"], { encoding: "utf8" }));
  return { uid: id("-u"), gid: id("-g") };
}

/** Starts one; null where PostgreSQL is not installed and nothing says that it must be (`NEED_POSTGRES=1`). */
export async function startTestPostgres(): Promise<TestPostgres | null> {
  const programs = postgresPrograms();
  if (programs === null) {
    if (process.env.NEED_POSTGRES !== "1") {
      console.warn(
        "PostgreSQL is not installed here, so only SQLite is tried. Debian: apt-get install postgresql",
      );
      return null;
    }
    throw new Error(
      "NEED_POSTGRES is set, but there is no PostgreSQL here. Debian: apt-get install postgresql",
    );
  }
  const who = identity();
  const folder = mkdtempSync(join(tmpdir(), "jetwright-pg-"));
  if (who.uid !== undefined) chownSync(folder, who.uid, who.gid!);
  const data = join(folder, "data");
  const run = (program: string, args: readonly string[]) =>
    execFileSync(join(programs, program), args, { ...who, stdio: ["ignore", "pipe", "pipe"], cwd: folder });
  run("initdb", ["-D", data, "-U", "postgres", "-A", "trust", "-E", "UTF8", "--no-locale"]);

  let child: ReturnType<typeof spawn> | null = null;
  let databases = 0;
  const socket = encodeURIComponent(folder);
  const start = async () => {
    child = spawn(
      join(programs, "postgres"),
      ["-D", data, "-k", folder, "-h", "", "-c", "max_connections=150"],
      {
        ...who,
        cwd: folder,
        stdio: "ignore",
      },
    );
    for (let tries = 0; ; tries++) {
      try {
        run("psql", ["-h", folder, "-U", "postgres", "-Atc", "SELECT 1"]);
        return;
      } catch (error) {
        if (tries > 300) throw error;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
    }
  };
  const stop = async (how: "fast" | "immediate") => {
    const running = child;
    child = null;
    if (running === null || running.exitCode !== null) return;
    const ended = new Promise((resolve) => running.once("exit", resolve));
    running.kill(how === "fast" ? "SIGINT" : "SIGQUIT");
    await ended;
  };
  // A run that fails leaves nothing behind.
  process.once("exit", () => {
    child?.kill("SIGQUIT");
    rmSync(folder, { recursive: true, force: true });
  });
  await start();
  return {
    freshUrl: () => {
      const name = `shop${++databases}`;
      run("psql", ["-h", folder, "-U", "postgres", "-c", `CREATE DATABASE ${name}`]);
      return `postgres://postgres@/${name}?host=${socket}`;
    },
    start,
    stop,
    remove: async () => {
      await stop("immediate");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
