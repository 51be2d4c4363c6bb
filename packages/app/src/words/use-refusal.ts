import { useTable } from "./use-table.ts";

/** Reasons in words; English is what each refusal says itself, with its figures. */
type Refused = Readonly<Record<string, string>>;

const LOADERS = {
  de: (): Promise<Refused> => import("./de/refused.ts").then(({ refused }) => refused),
  es: (): Promise<Refused> => import("./es/refused.ts").then(({ refused }) => refused),
};

/** Why something was refused: its reason, and its English. */
export interface Why {
  readonly reason: string;
  readonly detail: string;
}

/** Says why something was refused in the language in use; its own English where that has no words for the reason. */
export function useRefusal(): (why: Why) => string {
  const refused = useTable(LOADERS);
  return ({ reason, detail }) => refused?.[reason] ?? detail;
}
