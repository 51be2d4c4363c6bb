import type { SignWords } from "../../entry.ts";

/** Heat, smell and fuel. */
export const temperatureAndSmell = {
  "very-hot-or-boils": {
    words: "Coolant boils, or the engine is very hot",
    description:
      "Steam or coolant from the overflow, or a cylinder that ticks and smells hot after a normal ride.",
    notToBeTakenFor: "Slow technical riding without wind.",
    when: "After normal riding",
  },
  "coolant-goes-missing": {
    words: "Coolant goes missing",
    description:
      "The level falls from ride to ride with no drip below; perhaps bubbles in the radiator or sweet white smoke.",
    when: "Engine cold, level looked at before each ride",
  },
  "hiss-or-wet-at-head-joint": {
    words: "Hiss, oil or soot at the head joint",
    description: "A wet or black line where head and cylinder meet, or a hiss when it is turned over.",
    when: "Engine clean, after a ride",
  },
  "petrol-smell-eyes-sting": {
    words: "Strong smell of petrol, eyes sting",
    description: "The exhaust smells raw and stings the eyes of whoever stands behind.",
    notToBeTakenFor: "Race fuel, which smells strong anyway.",
    when: "Warm, standing outdoors",
  },
  "better-cold-morning-worse-hot-noon": {
    words: "Better in the cold morning, worse at hot noon",
    description: "Sharp at dawn; the same setting is thick and dull by noon.",
    notToBeTakenFor: "A tired rider.",
    when: "One day, one setting; set it down for the noon ride",
  },
  "better-at-noon-than-dawn": {
    words: "Better at noon than at dawn",
    description: "Thin, jerky or gasping at dawn though warmed up; the same setting is good by noon.",
    notToBeTakenFor: "An engine not warm yet.",
    when: "One day, one setting; set it down for the dawn ride",
  },
  "cured-by-fresh-fuel": {
    words: "Cured by fresh fuel",
    description: "Tank and bowl drained, fresh mix filled in, and the trouble is gone.",
    when: "The same test before and after",
  },
} satisfies Readonly<Record<string, SignWords>>;
