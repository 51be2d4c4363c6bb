import type { SignWords } from "../../entry.ts";

/** Full throttle, and revving past the peak. */
export const wideOpen = {
  "pulls-clean-to-peak": {
    words: "Pulls clean to the top and signs off cleanly",
    description:
      "Opened right up it pulls hard all the way, one clear note, then simply stops pulling at the top.",
    when: "Full throttle, 3rd gear or higher",
  },
  "will-not-rev-out": {
    words: "Will not rev out: flat and rough on top",
    description:
      "It pulls, then goes flat, rough and burbling before the top, as if a hand held it back; often smoke.",
    notToBeTakenFor: "A rev limiter, which also makes it burble.",
    when: "Full throttle under load",
  },
  "fades-then-recovers": {
    words: "Strong, then fades; recovers when closed",
    description:
      "Full throttle pulls well at first, goes weak and thin after some seconds, and is back once it has been closed.",
    notToBeTakenFor: "An air leak, which does not need the seconds.",
    when: "Long full throttle",
  },
  "fades-after-ten-seconds": {
    words: "Fades after about ten seconds, fine again at once",
    description:
      "Count to ten at full throttle before it fades; close it for a few seconds and the next ten are as strong as the first.",
    when: "Full throttle counted in seconds, twice",
  },
  "cuts-as-if-tap-off": {
    words: "Cuts as if the tap were off, then comes back",
    description:
      "On a long full throttle it dies away completely, coasts, and comes back by itself after a few seconds.",
    notToBeTakenFor: "A broken wire, which cuts sharp and without warning.",
    when: "Long full throttle",
  },
  "over-revs-thin-and-sharp": {
    words: "Revs on and on, thin and sharp",
    description: "Past its peak it keeps revving with a thin, hard, ringing note, and little pull behind it.",
    when: "Past peak revs",
  },
  "tearing-note-at-full-throttle": {
    words: "Metallic, tearing note at full throttle",
    description:
      "A hard metallic knock or a sound like tearing sheet metal under full load. Shut off gently and do not repeat it.",
    notToBeTakenFor: "A leak at the pipe joint.",
    when: "Full load: stop",
  },
  "knocks-from-inside": {
    words: "Knocks or grinds from inside",
    description:
      "A dull knock, grinding or rumble in time with the engine that was not there before. Stop the engine.",
    when: "Any time: stop",
  },
  "seized-or-nipped": {
    words: "Seized, or nipped up and freed itself",
    description:
      "The rear wheel locked or the engine slowed hard by itself with a squeal, and then turned stiff or free again.",
    when: "Any time: stop",
  },
  "clears-with-filter-off": {
    words: "Runs clean for one short run with the filter off",
    description:
      "Thick and flat with the filter on; with it off for one short, dust-free run it pulls clean on top.",
    when: "One short run on clean ground, never at full throttle for long",
  },
  "better-with-cap-or-vent-free": {
    words: "Cured with the tank cap loose or a vent hose pulled",
    description:
      "The same long run no longer fades or dies once the tank cap is loosened or the bowl's vent hose is pulled off.",
    when: "The run that faded, repeated",
  },
} satisfies Readonly<Record<string, SignWords>>;
