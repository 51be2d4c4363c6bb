import type { SignWords } from "../../entry.ts";

/** What plug and piston show. */
export const partsSeen = {
  "plug-nose-white": {
    words: "Plug nose white or glazed",
    description: "The porcelain around the centre wire is bone white or shiny, no trace of colour.",
    notToBeTakenFor: "A brand-new plug run too short.",
    when: "New plug, held at one throttle, engine cut clean there",
  },
  "plug-nose-dry-black": {
    words: "Plug nose dry and sooty black",
    description: "Dull black soot over the porcelain that wipes off on a finger.",
    notToBeTakenFor: "Soot from idling after the run.",
    when: "New plug, held at one throttle, engine cut clean there",
  },
  "plug-nose-tan": {
    words: "Plug nose tan or light brown",
    description: "An even biscuit colour on the porcelain. Modern fuel and oil can leave it paler.",
    when: "New plug, held at one throttle, engine cut clean there",
  },
  "mixture-ring-wide": {
    words: "Wide dark ring deep on the plug's porcelain",
    description: "Looked at deep down with a glass, a broad dark band climbs from the base of the porcelain.",
    when: "Plug cut open or magnifier, about 10 times",
  },
  "mixture-ring-thin": {
    words: "Thin dark ring at the very base of the porcelain",
    description:
      "Looked at deep down with a glass, a narrow dark line right where the porcelain meets the shell.",
    when: "Plug cut open or magnifier, about 10 times",
  },
  "mixture-ring-none": {
    words: "No dark ring on the porcelain at all",
    description: "Looked at deep down with a glass, the porcelain is pale right to its base.",
    notToBeTakenFor: "A fresh plug run too short, which shows nothing either.",
    when: "Plug cut open or magnifier, about 10 times",
  },
  "plug-wet-and-oily": {
    words: "Plug wet and oily",
    description: "Black and shining wet, it leaves oil on the fingers.",
    notToBeTakenFor: "Wet with petrol after many kicks: that dries off.",
    when: "After riding",
  },
  "specks-on-plug": {
    words: "Grey specks or tiny metal beads on the plug",
    description:
      "Ash-grey pepper or tiny shining balls on the porcelain. Stop: the piston may be giving them.",
    notToBeTakenFor: "Beads from an oil additive shine too; take it as metal until proven.",
    when: "Any time the plug is out: stop",
  },
  "everyday-plug-dark": {
    words: "Everyday plug dark, no clean cut",
    description:
      "The plug that has been in all along is dark. It mixes every throttle position ridden and the idling at the end.",
    when: "Plug taken out after an ordinary ride",
  },
  "plug-same-whatever-the-jets": {
    words: "Plug looks the same whatever jets are in",
    description:
      "Two or more jet steps apart, each with a clean plug and the same run, and the colour does not move.",
    when: "At least two jet sizes compared",
  },
  "piston-wash-wide": {
    words: "Wide bare areas on the piston crown",
    description: "Large patches of clean bright metal where the fresh charge streams in.",
    notToBeTakenFor: "A new or just cleaned piston.",
    when: "Crown seen through the plug hole, the exhaust, or head off",
  },
  "piston-wash-narrow": {
    words: "Narrow bare bands on the piston crown",
    description: "A slim clean band of metal at each transfer port, the rest evenly coloured.",
    notToBeTakenFor: "Bands of unequal size: one port may leak or be blocked.",
    when: "Crown seen through the plug hole, the exhaust, or head off",
  },
  "piston-wash-none": {
    words: "No bare metal on the piston crown",
    description: "The crown is coloured all over, right up to the transfer ports.",
    when: "Crown seen through the plug hole, the exhaust, or head off",
  },
  "black-spot-under-crown": {
    words: "Hard black spot under the crown",
    description: "Piston out: the underside of the crown carries a hard, burnt-on black patch of oil.",
    when: "Piston out",
  },
  "crown-grey-edge-sand-blasted": {
    words: "Crown ash-grey, its edge as if sand-blasted",
    description: "The crown is pale grey and dry, the rim opposite the plug pitted and rough.",
    when: "Piston seen",
  },
  "piston-scuffed": {
    words: "Piston scuffed at four corners or the exhaust side",
    description:
      "Piston out: grey smeared streaks at four places or on the exhaust side. It has seized, if only for a moment.",
    notToBeTakenFor: "Scratches from dirt, which go all round.",
    when: "Piston out: stop",
  },
  "sooty-plug-four-stroke": {
    words: "Plug dry and sooty",
    description: "Dull dry soot on porcelain and shell after normal riding, not wet.",
    when: "After ten minutes or more of riding at the throttle asked for",
  },
} satisfies Readonly<Record<string, SignWords>>;
