import type { Environment } from "./open-database.ts";

/** What a command of the server may touch of the terminal. */
export interface Terminal {
  readonly env: Environment;
  readonly out: (text: string) => void;
  readonly error: (text: string) => void;
}

/** Exit codes: all is well; a bug of ours; something that was asked for cannot be done. */
export const FINE = 0;
export const OUR_BUG = 1;
export const BAD_INPUT = 2;

/** One of the server's commands. */
export interface ServerCommand {
  readonly name: string;
  readonly manual: string;
  /** Gives the exit code; a server that runs gives it when it has started. */
  readonly run: (argv: readonly string[], terminal: Terminal) => Promise<number>;
}
