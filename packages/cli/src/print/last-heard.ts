import { openingName, signById } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { type BikeStory, openingOf } from "@jetwright/records";
import { dayOf } from "./dates.ts";

const MOST = 6;

/** What was noticed on the last ride reported, in its own trade words; nothing where no ride told a sign. */
export function lastHeard({ rides, freshStart }: BikeStory): string[] {
  const last = [...rides]
    .reverse()
    .find(
      ({ entry }) =>
        entry.at >= (freshStart?.at ?? -Infinity) &&
        (entry.body.reports ?? []).some(({ seen }) => seen !== false),
    );
  if (last === undefined) return [];
  const heard = (last.entry.body.reports ?? [])
    .filter(({ seen }) => seen !== false)
    .map(({ sign, opening }) => {
      const words = wordsOf(sign);
      return opening === undefined
        ? lowerFirst(words)
        : `${lowerFirst(words)} (at ${openingName(openingOf(opening))})`;
    });
  const more = heard.length > MOST ? `; and ${heard.length - MOST} more` : "";
  return [`Last ride, ${dayOf(last.entry)}: ${heard.slice(0, MOST).join("; ")}${more}.`];
}

const wordsOf = (id: string): string => {
  const sign = signById(id);
  return sign === undefined ? id : english.signs[sign.id].words;
};

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
