import { type Io, speaksUnicode, wantsColour, widthFor } from "./io.ts";
import { run } from "./run.ts";
import { isServerCommand } from "./server-commands.ts";

/** Runs one command line in this process and gives its exit code. */
export async function main(argv: readonly string[]): Promise<number> {
  // The reader went away (`| head`): there is nobody left to tell, and nothing is wrong.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
  const out = (text: string): void => void process.stdout.write(text);
  const error = (text: string): void => void process.stderr.write(text);
  const [name, about] = argv;
  if (name === "help" && isServerCommand(about)) return main([about, "--help"]);
  if (isServerCommand(name)) {
    // Loaded here alone: the other commands need no database.
    const { runServerCommand } = await import("@jetwright/server");
    return runServerCommand(argv, { env: process.env, out, error });
  }
  const terminal = process.stdout.isTTY === true;
  const io: Io = {
    stdin: process.stdin,
    stdinIsTerminal: process.stdin.isTTY === true,
    out,
    error,
    width: widthFor(process.stdout.columns),
    unicode: speaksUnicode(process.env),
    colour: wantsColour(process.env, terminal),
    now: Date.now,
  };
  return run(argv, io);
}
