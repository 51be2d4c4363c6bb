import type { Command } from "./command.ts";
import { air } from "./commands/air.ts";
import { baseline } from "./commands/baseline.ts";
import { chart } from "./commands/chart.ts";
import { check } from "./commands/check.ts";
import { compare } from "./commands/compare.ts";
import { next } from "./commands/next.ts";
import { signs } from "./commands/signs.ts";

/** Every command, in the order of the list. */
export const COMMANDS: readonly Command[] = [next, compare, air, chart, baseline, check, signs];
