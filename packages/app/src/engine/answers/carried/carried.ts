import { type Setup, toDegree, toMillimetre } from "@jetwright/core";
import {
  FITTED_PARTS,
  formatInstant,
  type JsonObject,
  type ShopState,
  type UsedEntry,
  writeRecord,
} from "@jetwright/records";
import { shortHash } from "./short-hash.ts";

/**
 * The records that carry a bike's setup to another phone, one line each: what it is, what is fitted, its air and
 * its fuel. The same setup gives the same records, so taking it twice adds nothing.
 */
export function carried(shop: ShopState, bike: string, setup: Setup): readonly string[] {
  const story = shop.bikes.get(bike);
  if (story === undefined || story.description === null) return [];
  const { notes: _notes, ...description } = story.description;
  const { parts } = story.now.setup;
  const last = (kind: UsedEntry["kind"]) => story.entries.findLast((entry) => entry.kind === kind);
  const described = last("bike-described")!;
  const fitted = last("setup-fitted");
  const known = Object.fromEntries(
    FITTED_PARTS.filter((name) => parts[name] !== undefined && parts[name] !== "unknown").map((name) => [
      name,
      name === "needle" ? withShape(parts.needle as JsonObject, setup) : (parts[name] as JsonObject),
    ]),
  );
  const { air, fuel } = story.now;
  return [
    made("bike-described", described, bike, description as JsonObject),
    ...(fitted === undefined || Object.keys(known).length === 0
      ? []
      : [made("setup-fitted", fitted, bike, { ...known, asFound: true })]),
    ...[air, fuel].flatMap((entry) => (entry === null ? [] : [bound(entry, bike)])),
  ];
}

/** A record that sums up several, named after the last of them and what it says. */
function made(kind: UsedEntry["kind"], after: UsedEntry, bike: string, body: JsonObject): string {
  const record = { kind, v: 1, at: formatInstant(after.at), bike, body };
  return writeRecord({ ...record, id: named(after.id, JSON.stringify(record)) });
}

/** A record as it was written; one of the whole shop becomes one of the bike, so that it stays with it. */
function bound(entry: UsedEntry, bike: string): string {
  if (entry.bike === bike) return writeRecord(entry.source);
  const { by: _by, ...rest } = entry.source;
  const record = { ...rest, bike };
  return writeRecord({ ...record, id: named(entry.id, JSON.stringify(record)) });
}

/** An id is 64 letters at most. */
const named = (id: string, text: string): string => `${id.slice(0, 55)}.${shortHash(text)}`;

const tidy = (x: number, digits: number): number => Number(x.toFixed(digits));

/** The needle with its shape as the micrometer found it, since the measurement itself stays behind. */
function withShape(told: JsonObject, setup: Setup): JsonObject {
  const needle = setup.needle.part;
  const profile = needle?.profile;
  if (!needle || !profile) return told;
  return {
    ...told,
    grooves: needle.grooves,
    groovePitchMm: tidy(toMillimetre(needle.groovePitch), 2),
    straightDiameterMm: tidy(toMillimetre(profile.straightDiameter), 3),
    tapers: profile.tapers.map(({ start, includedAngle }) => ({
      startMm: tidy(toMillimetre(start), 2),
      includedAngleDeg: tidy(toDegree(includedAngle), 3),
    })),
  };
}
