import { parseArgs } from "node:util";
import { accept, type Outcome, refuse } from "@jetwright/core";
import { didYouMean } from "@jetwright/records";
import type { Flags } from "./flag.ts";

/** Flags every command takes. */
export const COMMON_FLAGS: Flags = {
  json: { type: "switch", help: "Answer in JSON, as docs/schemas describes it" },
  us: { type: "switch", help: "Show °F, ft and inHg, and read bare numbers as such" },
  plain: { type: "switch", help: "Plain ASCII, no colour" },
  out: { type: "text", value: "FILE", help: "Write the answer to a new file; never over one" },
  help: { type: "switch", help: "Show this" },
};

/** What a command takes. */
export interface Wanted {
  readonly name: string;
  /** Command lines as they may be typed. */
  readonly usage: readonly string[];
  readonly flags: Flags;
  /** Fewest and most operands. */
  readonly operands: readonly [number, number];
}

/** A command's arguments, read. */
export interface Arguments {
  readonly operands: readonly string[];
  /** The value of a flag, or undefined when it was not given. */
  readonly text: (flag: string) => string | undefined;
  readonly on: (flag: string) => boolean;
}

const wrong = (what: string, mend: string) => refuse("arguments", `${what} ${mend}`);

/** Reads the arguments of one command. A value may begin with a minus where it is a number. */
export function readArguments(command: Wanted, argv: readonly string[]): Outcome<Arguments, "arguments"> {
  const flags = { ...command.flags, ...COMMON_FLAGS };
  const { tokens } = parseArgs({
    args: [...argv],
    strict: false,
    allowPositionals: true,
    tokens: true,
    options: {
      ...Object.fromEntries(
        Object.entries(flags).map(([name, { type }]) => [
          name,
          { type: type === "text" ? ("string" as const) : ("boolean" as const) },
        ]),
      ),
      help: { type: "boolean", short: "h" },
    },
  });
  const see = `See: jetwright ${command.name} --help`;
  const values = new Map<string, string | true>();
  const operands: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") operands.push(token.value);
    if (token.kind !== "option") continue;
    const flag = Object.hasOwn(flags, token.name) ? flags[token.name] : undefined;
    if (flag === undefined) {
      return wrong(`There is no flag ${token.rawName}.`, nearestFlag(token.name, flags, see));
    }
    if (values.has(token.name)) return wrong(`${token.rawName} is given twice.`, "Give it once.");
    if (flag.type === "switch") {
      if (token.value !== undefined) return wrong(`${token.rawName} takes no value.`, "Give it alone.");
      values.set(token.name, true);
      continue;
    }
    const { value } = token;
    const flagLike = value !== undefined && !token.inlineValue && /^-(?![\d.,])/.test(value) && value !== "-";
    if (value === undefined || value === "" || flagLike) {
      return wrong(`${token.rawName} needs a value.`, `Write ${token.rawName} ${flag.value ?? "VALUE"}.`);
    }
    values.set(token.name, value);
  }
  const [fewest, most] = command.operands;
  const helped = values.has("help");
  if (!helped && operands.length > most) {
    return wrong(`"${operands[most]}" is one argument too many for ${command.name}.`, see);
  }
  if (!helped && operands.length < fewest) return wrong(`Something is missing.`, `Use: ${command.usage[0]}`);
  return accept({
    operands,
    text: (flag) => {
      const value = values.get(flag);
      return typeof value === "string" ? value : undefined;
    },
    on: (flag) => values.get(flag) === true,
  });
}

const nearestFlag = (name: string, flags: Flags, see: string): string =>
  didYouMean(name, Object.keys(flags), see).replaceAll(/"([^"]+)"/g, "--$1");
