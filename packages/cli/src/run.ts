import { writeFileSync } from "node:fs";
import { accept, type Outcome, type Refusal, refuse } from "@jetwright/core";
import { didYouMean } from "@jetwright/records";
import { type Arguments, readArguments } from "./arguments.ts";
import type { Answer, Command, Look } from "./command.ts";
import { COMMANDS } from "./commands.ts";
import { fileTrouble } from "./input/file-trouble.ts";
import type { Io } from "./io.ts";
import { asciiText } from "./print/ascii.ts";
import { helpOf, overview } from "./print/help.ts";
import { printable } from "./print/printable.ts";
import { problemLines } from "./print/problem-lines.ts";
import { METRIC, US } from "./print/units.ts";
import { VERSION } from "./version.ts";

/** Exit codes. */
export const FINE = 0;
export const OUR_BUG = 1;
export const BAD_INPUT = 2;

/**
 * Runs one command line and gives its exit code: 0 when all is well; 2 when something of the input could not be
 * used, with what and how to mend it on the error stream and the answer from the rest; 1 for a bug of ours.
 */
export async function run(argv: readonly string[], io: Io): Promise<number> {
  try {
    return await dispatch(argv, io);
  } catch (error) {
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
    io.error(
      `This is a bug in Jetwright, not in your log. Please report it with this text:\njetwright ${argv.join(" ")}\n${trace}\n`,
    );
    return OUR_BUG;
  }
}

async function dispatch(argv: readonly string[], io: Io): Promise<number> {
  const [name, ...rest] = argv;
  if (name === "--version" || name === "-V") return say(io, `${VERSION}\n`);
  if (name === undefined || name === "--help" || name === "-h") return say(io, overview(COMMANDS, io));
  if (name === "help") {
    const [about] = rest;
    if (about === undefined) return say(io, overview(COMMANDS, io));
    const command = find(about);
    return command.ok ? say(io, helpOf(command.value, io)) : refused(io, command, false);
  }
  const command = find(name);
  if (!command.ok) return refused(io, command, rest.includes("--json"));
  const args = readArguments(command.value, rest);
  if (!args.ok) return refused(io, args, rest.includes("--json"));
  if (args.value.on("help")) return say(io, helpOf(command.value, io));
  return answer(command.value, args.value, io);
}

function find(name: string): Outcome<Command, "no-such-command"> {
  const command = COMMANDS.find((one) => one.name === name);
  if (command !== undefined) return accept(command);
  const names = COMMANDS.map((one) => one.name);
  const otherwise = `The commands are ${names.join(", ")}.`;
  return refuse("no-such-command", `There is no command "${name}". ${didYouMean(name, names, otherwise)}`);
}

async function answer(command: Command, args: Arguments, io: Io): Promise<number> {
  const json = args.on("json");
  const plain = args.on("plain");
  const look: Look = {
    width: io.width,
    unicode: io.unicode && !plain,
    colour: io.colour && !plain && args.text("out") === undefined,
    units: args.on("us") ? US : METRIC,
  };
  const found = await command.run(args, io, look);
  if (!found.ok) return refused(io, found, json, look.unicode);
  const text = json ? `${JSON.stringify(found.value.json, null, 2)}\n` : styled(found.value, look);
  const out = args.text("out");
  if (out === undefined) io.out(text);
  else {
    const written = writeNew(out, text);
    if (!written.ok) return refused(io, written, json);
    io.error(`Written to ${out}.\n`);
  }
  const { problems } = found.value;
  if (problems.length === 0) return FINE;
  if (!json) io.error(legible(problemLines(problems, io.width), look.unicode));
  return BAD_INPUT;
}

const styled = (found: Answer, look: Look): string =>
  legible(`${found.text.trimEnd().replaceAll(/\n{3,}/g, "\n\n")}\n`, look.unicode);
const legible = (text: string, unicode: boolean): string => (unicode ? text : asciiText(text));

function say(io: Io, text: string): number {
  io.out(legible(text, io.unicode));
  return FINE;
}

function refused(io: Io, { reason, detail }: Refusal, json: boolean, unicode = io.unicode): number {
  if (json) io.out(`${JSON.stringify({ refused: { reason, detail } }, null, 2)}\n`);
  io.error(legible(`jetwright: ${printable(detail)}\n`, unicode));
  return BAD_INPUT;
}

/** Writes a file that is not there yet. */
function writeNew(path: string, text: string): Outcome<null> {
  try {
    writeFileSync(path, text, { flag: "wx" });
    return accept(null);
  } catch (error) {
    return fileTrouble(error, path, "write");
  }
}
