import { type FlawTold, type FlawWords, flawText } from "@jetwright/records";
import { useTable } from "./use-table.ts";

/** A flaw with its English. */
interface Flaw {
  readonly told: FlawTold;
  readonly what: string;
  readonly mend: string;
}

const LOADERS = {
  de: (): Promise<FlawWords> => import("@jetwright/records/words/de/flaws").then(({ flaws }) => flaws),
  es: (): Promise<FlawWords> => import("@jetwright/records/words/es/flaws").then(({ flaws }) => flaws),
};

/** Says what is wrong with a record and how to mend it in the language in use; in its own English until that is here. */
export function useFlawText(): (flaw: Flaw) => Pick<Flaw, "what" | "mend"> {
  const table = useTable(LOADERS);
  return (flaw) => (table === null ? flaw : flawText(flaw.told, table));
}
