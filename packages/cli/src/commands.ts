import type { Command } from "./command.ts";
import { next } from "./commands/next.ts";

/** Every command, in the order of the list. */
export const COMMANDS: readonly Command[] = [next];
