import type { Outcome } from "@jetwright/core";
import type { Problem } from "@jetwright/records";
import type { Arguments, Wanted } from "./arguments.ts";
import type { Io } from "./io.ts";
import type { Units } from "./print/units.ts";

/** What a command found: the same answer for programs and for people. */
export interface Answer {
  readonly json: object;
  readonly text: string;
  /** What of the input could not be used. Any of it makes the exit code 2, with the answer given all the same. */
  readonly problems: readonly Problem[];
}

/** How the answer is to look. */
export interface Look {
  readonly width: number;
  readonly unicode: boolean;
  readonly colour: boolean;
  readonly units: Units;
}

export interface Command extends Wanted {
  /** One line of the list of commands. */
  readonly summary: string;
  /** Teaches: when to use it, a worked example, how to read the answer. */
  readonly manual: string;
  readonly run: (args: Arguments, io: Io, look: Look) => Promise<Outcome<Answer>>;
}
