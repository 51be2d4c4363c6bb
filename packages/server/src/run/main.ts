import { runServerCommand } from "./commands.ts";

/** The server by itself, for a service or a container: `node --import tsx packages/server/src/run/main.ts --port 4173`. */
process.exitCode = await runServerCommand(["serve", ...process.argv.slice(2)], {
  env: process.env,
  out: (text) => void process.stdout.write(text),
  error: (text) => void process.stderr.write(text),
});
