import type { SignWords } from "../../entry.ts";

/** Starting and idle. */
export const startingAndIdle = {
  "starts-on-choke-runs-clean-soon": {
    words: "Cold: starts on the choke, runs clean soon after",
    description:
      "A few kicks with the choke on, half a minute of thick running, then it takes the throttle without the choke.",
    when: "First start of the day, below about 20 °C",
  },
  "cold-start-without-choke": {
    words: "Cold: starts without any choke",
    description: "Fires up stone cold with the choke never touched, and runs on straight away.",
    notToBeTakenFor: "A start with the engine still warm, or after tickling the float.",
    when: "First start of the day, below about 15 °C",
  },
  "runs-only-on-choke": {
    words: "Runs only with the choke on",
    description:
      "Hot, and still dies the moment the choke goes off; with the choke on it idles and takes a little throttle.",
    notToBeTakenFor: "A choke worked the wrong way round: some pull for on, some push.",
    when: "Engine hot, closed to 1/4",
  },
  "hot-start-needs-open-throttle": {
    words: "Hot: starts only with the throttle wide open",
    description:
      "After a stop it will not catch until the throttle is held open; then it clears its throat with a burble and smoke.",
    notToBeTakenFor: "Pumping the throttle before kicking, which floods a good engine too.",
    when: "A few minutes after a hot stop",
  },
  "hot-start-needs-choke": {
    words: "Hot: starts only with the choke",
    description: "Warm from riding, and it will not catch without the choke; no smell of petrol, no smoke.",
    notToBeTakenFor: "Tap still off, or fuel boiled out of the bowl.",
    when: "A few minutes after a hot stop",
  },
  "petrol-drips-from-overflow": {
    words: "Petrol drips from the overflow hose",
    description: "Standing upright with the tap on, petrol drips or runs from the hose under the bowl.",
    notToBeTakenFor: "A few drops after the bike lay on its side.",
    when: "Parked upright, tap on",
  },
  "floods-after-a-fall": {
    words: "Floods after a fall",
    description:
      "After lying on its side it needs many kicks, the plug comes out wet, then it runs as before.",
    when: "Right after a fall; says nearly nothing about the jets",
  },
  "idles-steadily": {
    words: "Idles steadily",
    description: "An even beat that neither climbs nor sags for half a minute or longer, hands off.",
    notToBeTakenFor: "A very high idle, which hides a bad one.",
    when: "Warm, standing, hands off for more than 30 s",
  },
  "idle-loads-up": {
    words: "Idle loads up and dies",
    description:
      "Starts out fine, then slows and thickens, stumbles or stalls after 20 to 60 s; a blip clears it with a burble and smoke.",
    notToBeTakenFor: "An idle simply set too low: that one dies without a burble.",
    when: "Warm, standing for a minute",
  },
  "idle-hunts": {
    words: "Idle wanders up and down",
    description: "The idle climbs and falls by itself every few seconds, light and restless, no smoke.",
    notToBeTakenFor: "A loose slide or a worn cable.",
    when: "Warm, standing, hands off",
  },
  "idle-creeps-up-when-hot": {
    words: "Idle creeps up as it gets hot",
    description:
      "Set right when warm; after hard riding it idles clearly faster, nothing having been touched.",
    notToBeTakenFor: "A cable pulled as the bars turn.",
    when: "Right after a hard run",
  },
  "will-not-idle": {
    words: "Will not idle whatever the screw",
    description: "Dies as soon as the hand comes off, wherever the small screw is set.",
    notToBeTakenFor: "An idle stop screwed too far out.",
    when: "Warm",
  },
  "idle-needs-stop-screw-far-in": {
    words: "Idles only with the stop screw far in",
    description: "The slide has to be held well up before it stays running; a little less and it dies.",
    notToBeTakenFor: "A tired engine.",
    when: "Warm",
  },
  "idle-suddenly-high": {
    words: "Idle suddenly high, was fine last ride",
    description: "Screams or sits far above its old idle from one ride to the next, with no setting touched.",
    notToBeTakenFor: "A stop screw that moved: look at it first.",
    when: "Any time",
  },
  "idle-better-with-tap-shut": {
    words: "Idle gets better for a moment with the tap shut",
    description:
      "Thick, smoky idle that smooths out and picks up a little once the tap is closed, until the bowl runs low.",
    when: "Warm, standing, tap closed for a minute",
  },
  "spits-back-at-the-mouth": {
    words: "Spits fuel back at the carburetor mouth",
    description: "A mist of fuel stands at the mouth or wets the filter side; starts badly and pulls weakly.",
    when: "Filter off, idling and blipped, with eyes well away",
  },
  "kicks-over-easily": {
    words: "Kicks over easily",
    description: "The kick lever or starter spins it with little feel of a squeeze, and it is slow to catch.",
    notToBeTakenFor: "A decompression device doing its job.",
    when: "Engine off, throttle wide open",
  },
} satisfies Readonly<Record<string, SignWords>>;
