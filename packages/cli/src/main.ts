import { type Io, speaksUnicode, wantsColour, widthFor } from "./io.ts";
import { run } from "./run.ts";

/** Runs one command line in this process and gives its exit code. */
export async function main(argv: readonly string[]): Promise<number> {
  // The reader went away (`| head`): there is nobody left to tell, and nothing is wrong.
  process.stdout.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code === "EPIPE") process.exit(0);
    throw error;
  });
  const terminal = process.stdout.isTTY === true;
  const io: Io = {
    stdin: process.stdin,
    stdinIsTerminal: process.stdin.isTTY === true,
    out: (text) => void process.stdout.write(text),
    error: (text) => void process.stderr.write(text),
    width: widthFor(process.stdout.columns),
    unicode: speaksUnicode(process.env),
    colour: wantsColour(process.env, terminal),
    now: Date.now,
  };
  return run(argv, io);
}
