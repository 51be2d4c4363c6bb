import type { Entry, UsedEntry, UsedEntryOf } from "../entry.ts";
import type { Problem } from "../problem.ts";
import { BikeTrack } from "./bike-track.ts";
import { CountedDrawer } from "./counted-drawer.ts";
import type { Minutes, ShopState } from "./shop-state.ts";
import { type MeasuredNeedle, needleKey } from "./si-needle.ts";
import { withoutStruck } from "./strikes.ts";

/**
 * All that a log says. The order in which the records arrive does not matter: they are sorted by when they
 * happened, then by id. Records that are kept but not used say nothing here.
 */
export function replay(entries: Iterable<Entry>): ShopState {
  const { standing, struck, dangling } = withoutStruck(entries);
  const bikes = new Map<string, BikeTrack>();
  const drawer = new CountedDrawer();
  const needles = new Map<string, MeasuredNeedle>();
  const problems: Problem[] = [];
  let air: UsedEntryOf<"air-measured"> | null = null;
  let fuel: UsedEntryOf<"fuel-used"> | null = null;
  let firstAir: UsedEntryOf<"air-measured"> | null = null;
  let firstFuel: UsedEntryOf<"fuel-used"> | null = null;
  let minutes: Minutes = {};
  let oneChangeAtATime = false;

  const report = (entry: UsedEntry, path: string, what: string, mend: string): void => {
    problems.push({ line: entry.line, record: entry.id, path, what, mend });
  };
  for (const entry of standing) {
    if (entry.reading !== "used") continue;
    if (entry.kind === "parts-counted" || entry.kind === "parts-bought" || entry.kind === "parts-used") {
      for (const part of drawer.take(entry)) {
        const what = `more of a ${part.part} were used than the drawer held`;
        report(entry, "body.parts", what, "Count the drawer and write a parts-counted record.");
      }
    }
    if (entry.kind === "needle-measured") needles.set(needleKey(entry.body.marks, entry.bike), entry);
    if (entry.bike === null) {
      if (entry.kind === "air-measured") {
        air = entry;
        firstAir ??= entry;
        for (const bike of bikes.values()) bike.air(entry);
      } else if (entry.kind === "fuel-used") {
        fuel = entry;
        firstFuel ??= entry;
        for (const bike of bikes.values()) bike.fuel(entry);
      } else if (entry.kind === "labour-noted") minutes = { ...minutes, ...entry.body.minutes };
      else if (entry.kind === "preference-set")
        oneChangeAtATime = entry.body.oneChangeAtATime ?? oneChangeAtATime;
      continue;
    }
    let bike = bikes.get(entry.bike);
    if (bike === undefined) {
      if (entry.kind === "record-struck") continue;
      bike = new BikeTrack(entry.bike, air, fuel, firstAir, firstFuel);
      bikes.set(entry.bike, bike);
    }
    for (const name of bike.take(entry)) {
      const what = "was found fitted, but the records say another one was";
      report(
        entry,
        `body.${name}`,
        what,
        "If the older record is wrong, strike it; if it was changed since, all is well.",
      );
    }
  }
  for (const entry of dangling) {
    const mend =
      "It will count when that record arrives; if the id is misspelt, strike this and write it again.";
    report(entry, "body.record", `strikes "${entry.body.record}", which is not in this log`, mend);
  }
  return {
    bikes: new Map([...bikes].map(([id, track]) => [id, track.story()])),
    drawer: drawer.parts,
    needles,
    minutes,
    oneChangeAtATime,
    struck,
    problems,
  };
}
