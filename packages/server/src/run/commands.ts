import { DatabaseTrouble } from "../database/database.ts";
import { backup } from "./backup.ts";
import { restore } from "./restore.ts";
import { serve } from "./serve.ts";
import { BAD_INPUT, FINE, OUR_BUG, type ServerCommand, type Terminal } from "./terminal.ts";

/** Every command of the server. */
const COMMANDS: readonly ServerCommand[] = [serve, backup, restore];

/** Runs one command line of the server (its name first) and gives its exit code. */
export async function runServerCommand(argv: readonly string[], terminal: Terminal): Promise<number> {
  const [name, ...rest] = argv;
  const command = COMMANDS.find((one) => one.name === name);
  if (command === undefined) throw new RangeError(`The server has no command ${name}`);
  if (rest.includes("--help") || rest.includes("-h")) {
    terminal.out(`${command.manual}\n`);
    return FINE;
  }
  try {
    return await command.run(rest, terminal);
  } catch (error) {
    const world = whatTheWorldDid(error);
    if (world !== null) {
      terminal.error(`jetwright: ${world}\n`);
      return BAD_INPUT;
    }
    terminal.error(
      `This is a bug in Jetwright. Please report it with this text:\n${(error as Error).stack}\n`,
    );
    return OUR_BUG;
  }
}

/** What files, networks, databases and typed words can do; null for a bug of ours. */
function whatTheWorldDid(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const { code = "", syscall } = error as { code?: unknown; syscall?: unknown };
  const known =
    error instanceof DatabaseTrouble ||
    syscall !== undefined ||
    String(code).startsWith("ERR_PARSE_ARGS") ||
    // Tables of a newer version; PostgreSQL's own refusals, such as of a password (its manual, appendix A).
    error.message.startsWith("This data was written by a newer version") ||
    /^(28|3D|42501)/.test(String(code));
  return known ? error.message : null;
}
