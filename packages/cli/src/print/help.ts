import { COMMON_FLAGS } from "../arguments.ts";
import type { Command } from "../command.ts";
import type { Flags } from "../flag.ts";
import { SERVER_COMMANDS } from "../server-commands.ts";
import { hanging, wrap } from "./layout.ts";

interface Page {
  readonly width: number;
}

function flagLines(flags: Flags, { width }: Page): string[] {
  const names = Object.entries(flags).map(([name, { value }]) => `--${name}${value ? ` ${value}` : ""}`);
  const column = Math.max(...names.map((name) => name.length)) + 4;
  const lines: string[] = [];
  let group: string | undefined;
  Object.values(flags).forEach((flag, i) => {
    if (flag.group !== group) lines.push("", ...wrap(flag.group ?? "", width));
    group = flag.group;
    lines.push(...hanging(`  ${names[i]}`.padEnd(column), flag.help, width));
  });
  return lines;
}

/** A manual with its paragraphs wrapped; examples, which are indented or begin with {, stay as they are. */
const manualLines = (manual: string, { width }: Page): string[] =>
  manual
    .trim()
    .split("\n\n")
    .flatMap((block, i) => {
      const lines = block.split("\n");
      const example = lines.some((line) => /^[ {]/.test(line));
      return [...(i === 0 ? [] : [""]), ...(example ? lines : wrap(lines.join(" "), width))];
    });

/** The help of one command. */
export function helpOf(command: Command, page: Page): string {
  return [
    ...wrap(`jetwright ${command.name}: ${command.summary}`, page.width),
    "",
    ...command.usage.map((line) => `  ${line}`),
    "",
    ...manualLines(command.manual, page),
    ...(Object.keys(command.flags).length === 0 ? [] : ["", "Flags", ...flagLines(command.flags, page)]),
    "",
    "Flags of every command",
    ...flagLines(COMMON_FLAGS, page),
    "",
  ].join("\n");
}

/** What the tool is for, and its commands. */
export function overview(commands: readonly Command[], page: Page): string {
  const column = Math.max(...commands.map(({ name }) => name.length)) + 4;
  return [
    "Jetwright sets up a slide carburetor: from a bike's log to the next step.",
    "",
    ...commands.flatMap(({ name, summary }) => hanging(`  ${name}`.padEnd(column), summary, page.width)),
    "",
    "For a shop's server",
    ...Object.entries(SERVER_COMMANDS).flatMap(([name, summary]) =>
      hanging(`  ${name}`.padEnd(column), summary, page.width),
    ),
    "",
    ...wrap(
      "A log is a text file with one record a line: what was fitted, in which air, how the bike ran. `jetwright next --help` shows one that you can copy.",
      page.width,
    ),
    "",
    "  jetwright help COMMAND    teaches a command with an example",
    "  jetwright --version",
    "",
    "Exit code: 0 fine; 2 something in the input could not be used; 1 a bug of ours.",
    "",
  ].join("\n");
}
