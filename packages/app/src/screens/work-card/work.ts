/** A card half worked through, as kept on this device until its result is. */
export interface Work {
  readonly ticked: readonly number[];
  readonly opening: string | null;
  /** Where the small screw gave the best idle; null until it was moved. */
  readonly turns: number | null;
  /** Milliseconds of each try, by the name of the number. */
  readonly tries: Readonly<Record<string, readonly number[]>>;
  /** What the can held after each minute, as typed. */
  readonly can: readonly string[];
}

export const NEW_WORK: Work = { ticked: [], opening: null, turns: null, tries: {}, can: ["", ""] };

const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const numbersIn = (value: unknown): readonly number[] =>
  Array.isArray(value) ? value.filter((each): each is number => Number.isFinite(each)) : [];

/** Work as this or another version of the app stored it; what is not understood is passed over. */
export function readWork(stored: unknown): Work {
  if (!isObject(stored)) return NEW_WORK;
  const { ticked, opening, turns, tries, can } = stored;
  const text = (i: number): string => {
    const typed: unknown = Array.isArray(can) ? can[i] : "";
    return typeof typed === "string" ? typed : "";
  };
  return {
    ticked: numbersIn(ticked),
    opening: typeof opening === "string" ? opening : null,
    turns: typeof turns === "number" && Number.isFinite(turns) ? turns : null,
    tries: isObject(tries)
      ? Object.fromEntries(Object.entries(tries).map(([name, each]) => [name, numbersIn(each)]))
      : {},
    can: [text(0), text(1)],
  };
}
