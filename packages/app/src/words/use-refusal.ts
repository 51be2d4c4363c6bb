import { type Refusal, refusalText } from "@jetwright/core";
import { useTable } from "./use-table.ts";

/** Reasons in words; English is what each refusal says itself, with its figures. */
type Refused = Readonly<Record<string, string>>;

const LOADERS = {
  de: (): Promise<Refused> => import("./de/refused.ts").then(({ refused }) => refused),
  es: (): Promise<Refused> => import("./es/refused.ts").then(({ refused }) => refused),
};

/** Why something was refused: its reason, its English, and the figures of that. */
export type Why = Pick<Refusal, "reason" | "detail" | "given">;

/** Says why something was refused in the language in use; its own English where that has no words for the reason. */
export function useRefusal(): (why: Why) => string {
  const refused = useTable(LOADERS);
  return (why) => refusalText(why, { refusals: refused ?? {} });
}
