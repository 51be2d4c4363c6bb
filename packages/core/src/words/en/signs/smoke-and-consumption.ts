import type { SignWords } from "../../entry.ts";

/** Smoke, oil and fuel used. */
export const smokeAndConsumption = {
  "smokes-when-warm": {
    words: "Steady blue-white smoke when fully warm",
    description: "A constant haze behind the bike long after warming up, not just the first minutes.",
    notToBeTakenFor: "A pipe still cold, or an oil that smokes by nature.",
    when: "After ten minutes of riding",
  },
  "black-oil-at-silencer": {
    words: "Wet black oil at the silencer",
    description: "Unburnt black oil runs from the silencer or its joint, often with heavy smoke.",
    notToBeTakenFor: "The wet of slow riding, or too much oil in the fuel.",
    when: "After a ride",
  },
  "fouls-plugs": {
    words: "Fouls plugs again and again",
    description: "New plug, good for a while, then wet or black and dead; it happens over and over.",
    notToBeTakenFor: "A plug of the wrong heat range.",
    when: "Over several rides",
  },
  "uses-more-fuel": {
    words: "Uses clearly more fuel than before",
    description: "The same loop takes about 15 % more petrol than it used to.",
    notToBeTakenFor: "Sand or mud, which cost fuel too.",
    when: "The same ride measured",
  },
  "blue-header": {
    words: "Header blue or gold",
    description: "The first hand's breadth of the pipe has turned blue or gold.",
    notToBeTakenFor: "A thin plated pipe, which colours easily.",
    when: "Pipe cold and clean",
  },
  "header-inside-dark": {
    words: "Inside of the header black or dark",
    description: "Pipe off after a clean stop from a hot run: the inside at the flange is dark.",
    when: "Hot run, engine cut clean, pipe off when cool",
  },
  "header-inside-khaki": {
    words: "Inside of the header khaki",
    description:
      "Pipe off after a clean stop from a hot run: the inside at the flange is an even khaki brown.",
    when: "Hot run, engine cut clean, pipe off when cool",
  },
  "header-inside-white": {
    words: "Inside of the header white",
    description: "Pipe off after a clean stop from a hot run: the inside at the flange is pale or white.",
    when: "Hot run, engine cut clean, pipe off when cool",
  },
  "gearbox-oil-goes-missing": {
    words: "Gearbox oil goes missing",
    description:
      "The gearbox takes oil from ride to ride with no drip outside; the smoke smells of it, whatever the premix.",
    when: "Oil measured out at a change, or level looked at before each ride",
  },
  "black-dry-smoke-four-stroke": {
    words: "Black dry smoke on opening",
    description: "A puff or trail of dry black smoke when it is opened, no blue, no oil.",
    notToBeTakenFor: "Blue smoke, which is oil and engine wear.",
    when: "Warm, opened from low revs",
  },
  "oil-at-silencer-four-stroke": {
    words: "Oil at the silencer or blue smoke",
    description: "An oily black tail pipe, or blue smoke on opening or after a long closed throttle.",
    when: "Warm",
  },
} satisfies Readonly<Record<string, SignWords>>;
