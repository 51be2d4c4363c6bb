import type { Entry, UsedEntry, UsedEntryOf } from "../entry.ts";
import type { DrawerPart } from "../kinds/drawer-parts.ts";
import type { Problem } from "../problem.ts";
import { BikeTrack } from "./bike-track.ts";
import { CountedDrawer, type DrawerEntry, partName, type Shortage } from "./counted-drawer.ts";
import { ordersOf } from "./orders.ts";
import { type FittedParts, isUnknown, sameValue } from "./setup-timeline.ts";
import type { Customer, Minutes, ShopState } from "./shop-state.ts";
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
  const customers = new Map<string, Customer>();
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
    if (movesParts(entry)) {
      for (const short of drawer.take(entry)) {
        const path = entry.kind === "setup-fitted" ? "body.drawer.took" : "body.parts";
        report(entry, path, shortWords(short), "Count the drawer and write a parts-counted record.");
      }
    }
    if (entry.kind === "customer-described") {
      customers.set(entry.body.customer, { ...customers.get(entry.body.customer), ...entry.body });
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
    for (const part of keptAmiss(entry, bike.fitted)) {
      const what = `a ${partName(part)} went into the drawer, but by the records another one was fitted`;
      report(
        entry,
        "body.drawer.kept",
        what,
        "Look what came off; strike this and write it again if needed.",
      );
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
  const { orders, problems: ofOrders } = ordersOf(standing.filter((entry) => entry.reading === "used"));
  return {
    bikes: new Map([...bikes].map(([id, track]) => [id, track.story()])),
    drawer: drawer.parts,
    shortages: drawer.shortages,
    customers,
    orders,
    needles,
    minutes,
    oneChangeAtATime,
    struck,
    problems: [...problems, ...ofOrders],
  };
}

const movesParts = (entry: UsedEntry): entry is DrawerEntry =>
  entry.kind === "parts-counted" ||
  entry.kind === "parts-bought" ||
  entry.kind === "parts-used" ||
  entry.kind === "setup-fitted";

function shortWords({ part, lastTaken }: Shortage): string {
  const taken = `a ${partName(part)} was taken that the drawer did not hold`;
  if (lastTaken === null) return taken;
  const where = lastTaken.bike === null ? "" : `, for "${lastTaken.bike}"`;
  return `${taken}: "${lastTaken.id}" had taken the last one${where}`;
}

/** Parts said to have come off that are not what the records say was fitted. */
function keptAmiss(entry: UsedEntry, fitted: FittedParts): readonly DrawerPart[] {
  if (entry.kind !== "setup-fitted") return [];
  return (entry.body.drawer?.kept ?? []).filter(
    (part) => !isUnknown(fitted[part.part]) && !sameValue(part.part, fitted[part.part], part),
  );
}
