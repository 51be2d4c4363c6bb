import { type AirState, type Setup, toMillimetre, turnsText } from "@jetwright/core";
import type { BikeStory } from "@jetwright/records";
import { dayOf } from "./dates.ts";
import { oneLine } from "./printable.ts";
import type { Units } from "./units.ts";

/** What is fitted, on one line, from closed to full throttle. */
export function fittedLine(setup: Setup): string {
  const parts: string[] = [];
  const unknown: string[] = [];
  const say = <Part>(name: string, part: Part | null, words: (part: Part) => string): void => {
    if (part === null) unknown.push(name);
    else parts.push(words(part));
  };
  say("pilot", setup.pilot.part, ({ number }) => `pilot ${number}`);
  say("screw", setup.screw.part, ({ kind, turnsOut }) => `${kind} screw ${turnsText(turnsOut)} out`);
  say("slide", setup.cutaway.part, (cutaway) => `slide ${toMillimetre(cutaway).toFixed(1)} mm`);
  say("needle jet", setup.needleJet.part, (bore) => `needle jet ${toMillimetre(bore).toFixed(2)} mm`);
  say("needle", setup.needle.part, ({ marks }) => `needle ${oneLine(marks) || "without marks"}`);
  say("clip", setup.clip.part, (groove) => `clip in groove ${groove}`);
  say("main", setup.main.part, ({ number }) => `main ${number}`);
  const missing = unknown.length > 0 ? `. Not known: ${unknown.join(", ")}` : "";
  return parts.length === 0 ? "Fitted: nothing is known" : `Fitted: ${parts.join(", ")}${missing}.`;
}

/** The air in a few words: "14 °C, 962 hPa". */
export const airWords = (air: AirState, units: Units): string =>
  `${units.temperature(air.temperature)}, ${units.pressure(air.pressure)}`;

/** The air a bike is reckoned in, with where and when it was noted. */
export function airLine(story: BikeStory, air: AirState, units: Units, given: boolean): string {
  if (given) return `Air you gave: ${airWords(air, units)}.`;
  const entry = story.now.air ?? story.firstAir;
  const place = story.description?.place;
  const name = oneLine(entry?.body.place ?? place?.name ?? "");
  const height = entry?.body.heightM ?? place?.heightM;
  const where = [name, height === undefined ? "" : units.height(height as Parameters<Units["height"]>[0])]
    .filter((part) => part !== "")
    .join(", ");
  const when = entry === null ? "nobody noted it" : `noted ${dayOf(entry)}`;
  return `${where === "" ? "Air" : where}: ${airWords(air, units)} (${when}).`;
}

/** The bike's name and id. */
export const bikeTitle = ({ id, description }: BikeStory): string => {
  const name = oneLine(description?.name ?? "");
  return name === "" || name === id ? id : `${name} (${id})`;
};
