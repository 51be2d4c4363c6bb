import { type AirState, accept, type Outcome, refuse } from "@jetwright/core";
import {
  type BikeStory,
  bikeCase,
  type Entry,
  type Log,
  type Problem,
  type ReplayedCase,
  replay,
  type ShopState,
} from "@jetwright/records";
import type { Io } from "../io.ts";
import { readLogFrom } from "./read-log.ts";

/** One bike out of a log, ready to reckon with. */
export interface BikeOfLog {
  readonly story: BikeStory;
  readonly bike: ReplayedCase;
  readonly state: ShopState;
  readonly log: Log;
  /** Of the reading, then of how this bike's records fit together. */
  readonly problems: readonly Problem[];
}

/** Kinds that are needed for this bike also where they name another one: they tell what is in the drawer. */
const OF_THE_SHOP = new Set([
  "parts-counted",
  "parts-bought",
  "parts-used",
  "setup-fitted",
  "needle-measured",
]);

/**
 * Which records to hold for one bike: its own, the shop's and the drawer's. Without a bike named, all of the
 * first one met; as soon as there is a second one no more is held, as the person must choose.
 */
class Selection {
  readonly bikes = new Map<string, string>();
  readonly #wanted: string | undefined;

  constructor(wanted: string | undefined) {
    this.#wanted = wanted;
  }

  readonly hold = (entry: Entry): boolean => {
    const { bike } = entry;
    if (bike !== null && !this.bikes.has(bike)) this.bikes.set(bike, "");
    if (bike !== null && entry.reading === "used" && entry.kind === "bike-described" && entry.body.name) {
      this.bikes.set(bike, entry.body.name);
    }
    if (this.#wanted === undefined && this.bikes.size > 1) return false;
    if (entry.reading !== "used") return false;
    if (bike === null) return entry.kind !== "note" && entry.kind !== "photo";
    return bike === (this.#wanted ?? bike) || OF_THE_SHOP.has(entry.kind);
  };
}

/** Reads a log and works out one bike of it: the one named, or the only one there is. */
export async function bikeOfLog(
  path: string | undefined,
  wanted: string | undefined,
  io: Io,
  airNow?: AirState,
): Promise<Outcome<BikeOfLog>> {
  const selection = new Selection(wanted);
  const log = await readLogFrom(path, io, { hold: selection.hold });
  if (!log.ok) return log;
  const chosen = choose(selection.bikes, wanted, log.value);
  if (!chosen.ok) return chosen;
  const state = replay(log.value.entries);
  const bike = bikeCase(state, chosen.value, airNow === undefined ? {} : { now: { air: airNow } });
  if (!bike.ok) return bike;
  const story = state.bikes.get(chosen.value);
  if (story === undefined) throw new RangeError(`Bike ${chosen.value} has a case and no story`);
  return accept({
    story,
    bike: bike.value,
    state,
    log: log.value,
    problems: problemsOf(log.value, state, story),
  });
}

function choose(bikes: ReadonlyMap<string, string>, wanted: string | undefined, log: Log): Outcome<string> {
  if (bikes.size === 0) {
    const first = log.problems[0];
    const why =
      first === undefined
        ? "Add a bike-described record with the bike's name."
        : `First trouble, line ${first.line ?? "?"}, ${first.path || "the whole line"}: ${first.what}. ${first.mend}`;
    return refuse("no-bike", `No record of this log names a bike. ${why}`);
  }
  if (wanted !== undefined) {
    if (bikes.has(wanted)) return accept(wanted);
    const known = [...bikes.keys()].find((id) => id.toLowerCase() === wanted.toLowerCase());
    const byName = [...bikes].find(([, name]) => name.toLowerCase().includes(wanted.toLowerCase()))?.[0];
    const meant = known ?? byName;
    const hint = meant === undefined ? `Its bikes are ${listOf(bikes)}.` : `Did you mean --bike ${meant}?`;
    return refuse("no-such-bike", `No record of this log is about a bike "${wanted}". ${hint}`);
  }
  if (bikes.size > 1) {
    return refuse(
      "which-bike",
      `The log is about more than one bike. Say which with --bike: ${listOf(bikes)}.`,
    );
  }
  return accept([...bikes.keys()][0]!);
}

const LISTED = 20;

function listOf(bikes: ReadonlyMap<string, string>): string {
  const names = [...bikes].sort(([a], [b]) => (a < b ? -1 : 1)).slice(0, LISTED);
  const more = bikes.size > LISTED ? ` and ${bikes.size - LISTED} more` : "";
  return names.map(([id, name]) => (name === "" ? id : `${id} (${name})`)).join(", ") + more;
}

/** How this bike's records fit together; strikes and the drawer need records not held here and are left to `check`. */
function problemsOf(log: Log, state: ShopState, { entries }: BikeStory): readonly Problem[] {
  const own = new Set(entries.map(({ id }) => id));
  const left = new Set(["body.record", "body.parts", "body.drawer.took", "body.order"]);
  return [
    ...log.problems,
    ...state.problems.filter(({ path, record }) => record !== null && own.has(record) && !left.has(path)),
  ];
}
