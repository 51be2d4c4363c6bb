type Leaning = "rich" | "lean";

/** "at closed throttle", "from closed to 1/8", "from 3/4 up". */
function stretch(from: string, to: string): string {
  if (from === to) {
    if (from === "closed") return "at closed throttle";
    return from === "full" ? "at full throttle" : `at ${from}`;
  }
  if (from === "closed" && to === "full") return "from closed to full";
  return to === "full" ? `from ${from} up` : `from ${from} to ${to}`;
}

export const bike = {
  bikes: "Bikes",
  bar: { label: "This bike", ridden: "Ridden", next: "Next step", fitted: "Fitted" },
  aside: (ride: number, temperature: string, height: string | null) =>
    [ride === 0 ? "not ridden yet" : `ride ${ride}`, temperature, height].filter(Boolean).join(" · "),
  noBike: "No such bike",
  noSuch:
    "No record on this device is about it. It may stand on another phone: bring its copy in under More, Backup.",
  notDescribed:
    "Nobody has said what engine this bike has. Say it under The bike itself, and the advice begins.",
  openOrder: (complaint: string) => (complaint === "" ? "Work order open" : `Work order: “${complaint}”`),
  picture: "Mixture now",
  pictureRow: (opening: string) =>
    opening === "closed" || opening === "full" ? opening : `${opening} throttle`,
  opening: "Throttle",
  mixture: "Mixture",
  doubt: "give or take",
  percent: (x: number) => `${Math.abs(Math.round(x))} %`,
  stretch,
  both: (stretches: readonly string[]) =>
    stretches.length < 2
      ? stretches.join("")
      : `${stretches.slice(0, -1).join(", ")} and ${stretches.at(-1)}`,
  leans: (leaning: Leaning, sure: boolean) =>
    leaning === "rich" ? (sure ? "Rich" : "Looks rich") : sure ? "Lean" : "Looks lean",
  rightIs: "Right",
  allRight: "It runs right from closed to full.",
  openIs: "Not known yet",
  nothingTold: "Nobody has told yet how it runs.",
  usual:
    "The picture shows what such a bike usually does, and how far it may be off. A first ride report makes it yours.",
  nothingSettled: "What was told so far does not say whether it is rich or lean. The next step does.",
  rightAt: (day: string, air: string) => `Marked as right on ${day}${air === "" ? "" : `, at ${air}`}.`,
  twoSided: (where: string) =>
    `${where} it reads as two things: rich, or lean. A test settles it, not a guess.`,
  suspect: (what: string, chance: number) =>
    chance >= 0.6
      ? `Most likely it is ${what}, not a jet.`
      : chance >= 0.3
        ? `It may well be ${what}: look for that before any jet.`
        : `It could also be ${what}.`,
  suspectsMore: "Other suspects",
  next: "Next",
  minutes: (minutes: number) => `${Math.round(minutes)} minutes`,
  nextIn: (minutes: number) => `Next, ${Math.round(minutes)} minutes`,
  showMe: "Show me how",
  assumed: (count: number) => (count === 1 ? "One thing is assumed" : `${count} things are assumed`),
  leftOut: (count: number) => (count === 1 ? "One record is left out" : `${count} records are left out`),
  rough: "The reckoning stopped early: take the picture as rougher than drawn.",
  fitted: "What is fitted",
  edit: "Change or correct",
  notKnown: "not known",
  links: "More about this bike",
  describe: "The bike itself",
  /** Where a record's own words speak to somebody who writes records by hand, said for a person with a screen. */
  assumption: {
    "nothing-fitted": "Nobody has said what is fitted. Look, and write it down under Fitted.",
    "numbering-assumed":
      "What the jet numbers mean is not told: they were taken as bores in 1/100 mm. Say it under The bike itself.",
    "screw-side-unknown":
      "Nobody has said on which side of the slide the screw sits, so its turns are not used. Say it under The bike itself.",
    "air-assumed":
      "No air is noted: a standard day was taken, with a wide band. Note temperature and height under Air.",
    "fuel-assumed": "No fuel is noted: usual pump fuel was taken.",
  } as Readonly<Record<string, string>>,
  air: "Air",
  trip: "Trip",
  chart: "Chart of heights and temperatures",
  best: "Best setups for an air",
  sheet: "Sheet for the rider",
  listen: "Listen to the engine",
  history: "History",
  order: "Work order",
  here: "What did we run last time here?",
  ask: "Ask a friend",
  lately: "Lately",
  allHistory: "All of it",
};
