import type { Caution } from "./catalogue.ts";

const MEMORY = "trade knowledge from memory";

/** What to mind, shown at the moment it matters. All of it gives way to the maker's manual and local rules. */
export const CAUTIONS: readonly Caution[] = [
  {
    id: "makers-manual",
    text: "The maker's manual for this very bike comes before anything said here: its figures, its order, its torques.",
    source: MEMORY,
  },
  {
    id: "fuel-off-first",
    text: "Turn the fuel off before the job starts. Let the engine cool. Drain the bowl into a fuel-safe tray.",
    source: "common practice, no source; an article on fire and fumes, trifivechevys.com [read]",
  },
  {
    id: "petrol-vapour",
    text: "Work outdoors or with the doors open. No flame, heater, pilot light, grinder or smoking: petrol vapour is heavy and lies in pits. Have a fire extinguisher for burning liquids in reach; never use water.",
    source: "articles on fire and fumes in garages, trifivechevys.com and chopcult.com [read]",
  },
  {
    id: "spilled-fuel",
    text: "Wipe up spilled petrol before starting, and put the rags in a closed metal bin. A fuel leak that will not stop means: do not start it.",
    source: "an article on fire and fumes, trifivechevys.com [read]; memory",
  },
  {
    id: "battery",
    text: "Where there is a battery, take its negative lead off while fuel is open. Keep the plug lead away from fuel, and never crank with the plug out beside open fuel.",
    source: "an article on fire and fumes, trifivechevys.com [read]",
  },
  {
    id: "fumes",
    text: "Exhaust gas kills without a smell. Never run the engine indoors, not even with the door open; wind can push the gas back in.",
    source: "a tool maker's manual and a note on carbon monoxide, easymanua.ls and eagleleather.com [read]",
  },
  {
    id: "hot-parts",
    text: "Header, head and coolant burn. Wait, or wear gloves. Never open a hot radiator.",
    source: MEMORY,
  },
  {
    id: "eyes-and-skin",
    text: "Wear glasses when blowing jets out, and gloves against petrol and cleaner. Hold a rag over the jet. Never point an air line at skin.",
    source: "an article on carburetor cleaning [read]; a maker's manual [read]",
  },
  {
    id: "seizure-at-full-throttle",
    text: "Too little fuel at full throttle can seize the engine and lock the wheel. Start on the thick side, keep two fingers on the clutch, make no long full-throttle run on an unproved main jet, and stop at the first ping.",
    source: "2strokeworld.net 2450 and karting.co.uk 458596 [read]",
  },
  {
    id: "lean-damage",
    text: "Too little fuel burns pistons; too much mostly only fouls plugs. When unsure, go to the side of more fuel.",
    source: "several texts on carburetor setting [read]",
  },
  {
    id: "stop-at-knock",
    text: "A knock, a tearing note, metal on the plug or a nip of the piston ends the tuning. Shut off gently, do not repeat it, and find the cause.",
    source: "magazine.cycleworld.com August 2012 [read]; memory",
  },
  {
    id: "runaway",
    text: "Engine runs away: clutch in, brakes, kill switch. If it goes on, fuel off and cover the carburetor mouth if that is safe to reach; or, only seated with both wheels on the ground, top gear, both brakes hard, clutch out to stall it. Otherwise stand clear until it is dry, and no restart before slide, cable, boots and seals are checked.",
    source:
      "dirtrider.net 55146, pentonusa.org, thumpertalk.com, x-h2o.com, trialscentral.com [read]; memory",
  },
  {
    id: "slide-snap-before-start",
    text: "Before every first start, engine off: open and let go, bars straight, left and right. The slide must be heard hitting its stop. Keep a thumb at the kill switch.",
    source: "trialscentral.com 63536 [read]",
  },
  {
    id: "test-riding",
    text: "Ride tests only on a closed course or land where you may, in full gear, with somebody watching and the kill switch tried out. No phone in the hand. Children only under supervision.",
    source: "owner's manuals of competition machines [read]; memory",
  },
  {
    id: "noise",
    text: "Whoever helps beside the bike wears hearing protection. Keep to the place's noise limit and hours.",
    source: MEMORY,
  },
  {
    id: "free-revving",
    text: "Do not hold full throttle in neutral: nothing loads the engine, and parts fly. Short blips only.",
    source: MEMORY,
  },
  {
    id: "spray-fire",
    text: "Spraying fuel or gas at joints can start a fire. Never on a hot engine and never near a spark; the pressure test with soapy water tells more and burns nothing.",
    source: MEMORY,
  },
  {
    id: "low-pressure-only",
    text: "Low pressure only: never above 10 psi (0.69 bar) in a crankcase. Use a hand pump and a gauge to 15 psi, not a workshop air line.",
    source: "scooterlab.uk on the pressure test [read] for the gauge; the limit from memory",
  },
  {
    id: "never-wire-or-drill",
    text: "Clean jets with solvent and air only. Never put wire or a drill through one, and never blow toward the filter side.",
    source: "a maker's manual of a 125 motocrosser, 2010 [read]",
  },
  {
    id: "waste",
    text: "Petrol, cleaner, coolant, oil and old packing go to a collection point, never into a drain or the soil.",
    source: "a moped carburetor guide, doczz.net [read]; memory",
  },
  {
    id: "law",
    text: "On road-registered machines sealed screws and jets may not be altered, and changes can void approval and insurance. Off road, local rules on noise and spark arresters apply.",
    source: MEMORY,
  },
  {
    id: "hand-over",
    text: "Hand it to a licensed technician after a runaway, seizure or knock, with metal on the plug, a failed pressure test, a fuel leak that will not stop, a throttle or brake fault, or without the tools and a safe place.",
    source: "estimate",
  },
];

const byId = new Map(CAUTIONS.map((caution) => [caution.id, caution]));

/** The caution of that id. Throws RangeError for a name the list does not know, which would be our bug. */
export function cautionById(id: string): Caution {
  const caution = byId.get(id);
  if (caution === undefined) throw new RangeError(`Caution "${id}" is not in the list`);
  return caution;
}
