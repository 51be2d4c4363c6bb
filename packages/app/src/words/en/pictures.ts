type Governor = "pilot" | "slide" | "needle" | "main";

const PARTS: Readonly<Record<Governor, string>> = {
  pilot: "pilot",
  slide: "slide",
  needle: "needle",
  main: "main jet",
};

const amount = (percent: number): string => {
  const whole = Math.round(percent);
  if (whole === 0) return "right";
  return whole > 0 ? `${whole} % rich` : `${-whole} % lean`;
};

export const pictures = {
  rich: "rich",
  lean: "lean",
  right: "right",
  amount,
  opening: {
    closed: "closed",
    "1/8": "⅛",
    "1/4": "¼",
    "1/2": "½",
    "3/4": "¾",
    full: "full",
  } as Readonly<Record<string, string>>,
  spokenOpening: (name: string) =>
    name === "closed" ? "Throttle closed" : name === "full" ? "Full throttle" : `At ${name} throttle`,
  parts: PARTS,
  mixture: {
    label: "Mixture against throttle opening",
    hint: "Touch the picture, or use the arrow keys, to read it.",
    now: "now",
    after: "after",
    read: (opening: string, now: number, low: number, high: number) =>
      `${opening}: ${amount(now)}, likely between ${amount(low)} and ${amount(high)}.`,
    readAfter: (after: number) => `After the change: ${amount(after)}.`,
    governs: (part: Governor) => `Here the ${PARTS[part]} has most of the say.`,
    column: { opening: "Throttle", now: "Mixture now", between: "Likely between", after: "After the change" },
    between: (low: number, high: number) => `${amount(low)} and ${amount(high)}`,
    throttle: "throttle",
  },
  section: {
    filter: "filter",
    engine: "engine",
    usualMark: "(usual)",
    clip: (groove: number) => `clip in groove ${groove}`,
    needle: (marks: string | null) => (marks === null || marks === "" ? "needle" : `needle ${marks}`),
    cutaway: (millimetres: string) => `cutaway ${millimetres}`,
    needleJet: (millimetres: string) => `needle jet ${millimetres}`,
    main: (number: number | null) => (number === null ? "main jet" : `main ${number}`),
    pilot: (number: number | null) => (number === null ? "pilot" : `pilot ${number}`),
    screw: (kind: "air" | "fuel", turns: string) => `${kind === "air" ? "air" : "fuel"} screw ${turns}`,
    open: "Open the throttle",
    leads: (part: Governor) =>
      ({
        pilot: "the pilot circuit sets most of the fuel.",
        slide: "the slide's cutaway says how hard the fuel is drawn.",
        needle: "the gap beside the needle sets most of the fuel.",
        main: "the main jet sets most of the fuel.",
      })[part],
    gap: (millimetres: string) => `The gap beside the needle is ${millimetres} mm on each side.`,
    widened: "Here it is drawn much wider than it is, so that it can be seen.",
    millimetres: (figure: string) => `${figure} mm`,
    sharesTitle: "Shares and steps, in numbers",
    pilotShare: "Pilot circuit",
    needleShare: "Needle and needle jet",
    mainShare: "Main jet",
    clipStep: "Clip one groove lower",
    slideStep: "Half a millimetre less cutaway",
    screwStep: (kind: "air" | "fuel") =>
      kind === "air" ? "Air screw half a turn in" : "Fuel screw half a turn out",
    richer: (percent: string) => `${percent} % richer`,
    usual: (names: string) => `Not known, so a usual one is drawn: ${names}.`,
    usualNames: {
      pilot: "pilot jet",
      main: "main jet",
      needle: "needle",
      profile: "the needle's shape",
      clip: "clip groove",
      needleJet: "needle jet",
      cutaway: "cutaway",
      screw: "screw setting",
      fuelLift: "fuel level",
      seatToJet: "distance from clip to needle jet",
      idleLift: "lift at idle",
    } as Readonly<Record<string, string>>,
  },
  clip: {
    blunt: "blunt end",
    now: (clip: string) => `Now: ${clip}.`,
    goesTo: (clip: string, richer: boolean) => `Goes to: ${clip}, ${richer ? "richer" : "leaner"}.`,
    richer: "richer",
    lower: "clip one groove lower: the needle sits higher.",
    leaner: "leaner",
    higher: "clip one groove higher: the needle sits lower.",
    count: "Groove 1 is the top one, at the blunt end.",
    rule: "Groove 1 is the top one, at the blunt end; a lower groove (a higher number) lifts the needle and is richer.",
    in: (groove: number, of: number, shim: boolean) =>
      `clip in groove ${groove} of ${of} from the top${shim ? " with a half-step shim under it" : ""}`,
  },
  screw: {
    filter: "filter",
    engine: "engine",
    out: "out",
    in: "in",
    now: (turns: string, one: boolean) => `Now: ${turns} ${one ? "turn" : "turns"} out.`,
    goesTo: (turns: string, one: boolean, by: string, out: boolean, richer: boolean) =>
      `Goes to ${turns} ${one ? "turn" : "turns"} out: ${by} ${out ? "out" : "in"}, ${richer ? "richer" : "leaner"}.`,
    richer: "richer",
    leaner: "leaner",
    turnOut: "turn it out, against the clock.",
    turnIn: "turn it in, with the clock.",
    rule: {
      air: "An air screw sits on the filter side of the slide: out is leaner, in is richer.",
      fuel: "A fuel screw sits on the engine side of the slide: out is richer, in is leaner.",
    },
  },
  trend: {
    title: "From ride to ride",
    label: "Mixture at full, half and an eighth of the throttle, ride by ride",
    note: "As everything told up to now lets it be seen. A dotted upright: parts were changed before that ride.",
    few: "Two rides are the least that make a trend.",
    top: "full",
    middle: "1/2",
    bottom: "1/8",
    ride: (number: number) => `ride ${number}`,
    changed: "parts changed",
    column: { ride: "Ride", top: "Full throttle", middle: "Half throttle", bottom: "An eighth" },
  },
  carburetor: {
    title: "Carburetor",
    now: "As fitted",
    needle: "Clip",
    screw: "Screw",
    leads: "Which part leads where",
    back: "Fitted",
  },
};
