import type { Caution } from "./catalogue.ts";

const MEMORY = "trade knowledge from memory";

/** What to mind, shown at the moment it matters. All of it gives way to the maker's manual and local rules. */
export const CAUTIONS: readonly Caution[] = [
  {
    id: "makers-manual",
    source: MEMORY,
  },
  {
    id: "fuel-off-first",
    source: "common practice, no source; an article on fire and fumes, trifivechevys.com [read]",
  },
  {
    id: "petrol-vapour",
    source: "articles on fire and fumes in garages, trifivechevys.com and chopcult.com [read]",
  },
  {
    id: "spilled-fuel",
    source: "an article on fire and fumes, trifivechevys.com [read]; memory",
  },
  {
    id: "battery",
    source: "an article on fire and fumes, trifivechevys.com [read]",
  },
  {
    id: "fumes",
    source: "a tool maker's manual and a note on carbon monoxide, easymanua.ls and eagleleather.com [read]",
  },
  {
    id: "hot-parts",
    source: MEMORY,
  },
  {
    id: "eyes-and-skin",
    source: "an article on carburetor cleaning [read]; a maker's manual [read]",
  },
  {
    id: "seizure-at-full-throttle",
    source: "2strokeworld.net 2450 and karting.co.uk 458596 [read]",
  },
  {
    id: "lean-damage",
    source: "several texts on carburetor setting [read]",
  },
  {
    id: "stop-at-knock",
    source: "magazine.cycleworld.com August 2012 [read]; memory",
  },
  {
    id: "runaway",
    source:
      "dirtrider.net 55146, pentonusa.org, thumpertalk.com, x-h2o.com, trialscentral.com [read]; memory",
  },
  {
    id: "slide-snap-before-start",
    source: "trialscentral.com 63536 [read]",
  },
  {
    id: "test-riding",
    source: "owner's manuals of competition machines [read]; memory",
  },
  {
    id: "noise",
    source: MEMORY,
  },
  {
    id: "free-revving",
    source: MEMORY,
  },
  {
    id: "spray-fire",
    source: MEMORY,
  },
  {
    id: "low-pressure-only",
    source: "scooterlab.uk on the pressure test [read] for the gauge; the limit from memory",
  },
  {
    id: "never-wire-or-drill",
    source: "a maker's manual of a 125 motocrosser, 2010 [read]",
  },
  {
    id: "waste",
    source: "a moped carburetor guide, doczz.net [read]; memory",
  },
  {
    id: "law",
    source: MEMORY,
  },
  {
    id: "hand-over",
    source: "estimate",
  },
];

const byId = new Map<string, Caution>(CAUTIONS.map((caution) => [caution.id, caution]));

/** The caution of that id. Throws RangeError for a name the list does not know, which would be our bug. */
export function cautionById(id: string): Caution {
  const caution = byId.get(id);
  if (caution === undefined) throw new RangeError(`Caution "${id}" is not in the list`);
  return caution;
}
