import type { Situation } from "../metering/situation.ts";
import { jetText } from "../parts/jet-compare.ts";
import type { Setup } from "../parts/setup.ts";
import { toMillimetre } from "../units/convert.ts";
import type { PartChange } from "./advice.ts";
import type { LabourPart } from "./case.ts";
import { upperFirst } from "./reasons.ts";
import type { Candidate } from "./search.ts";
import { turnsOutText, turnsText } from "./turns-words.ts";

const NAMES: Readonly<Record<LabourPart, string>> = {
  main: "main jet",
  pilot: "pilot jet",
  needle: "needle",
  clip: "clip",
  slide: "slide",
  screw: "screw",
  needleJet: "needle jet",
};

export const partName = (part: LabourPart, setup: Setup): string =>
  part === "screw" ? `${setup.body.screwKind} screw` : NAMES[part];

/** How a part stands in a setup, short: "175", "groove 3", "1½ turns out". */
export function partValue(part: LabourPart, setup: Setup): string {
  switch (part) {
    case "main":
    case "pilot":
      return setup[part].part === null ? "not known" : `${setup[part].part.number}`;
    case "clip":
      return setup.clip.part === null ? "not known" : `groove ${setup.clip.part}`;
    case "needle":
      return setup.needle.part === null
        ? "not known"
        : `${setup.needle.part.marks}, groove ${setup.clip.part ?? "?"}`;
    case "slide":
      return setup.cutaway.part === null
        ? "not known"
        : `cutaway ${toMillimetre(setup.cutaway.part).toFixed(1)} mm`;
    case "screw":
      return setup.screw.part === null ? "not known" : turnsOutText(setup.screw.part.turnsOut);
    case "needleJet":
      return setup.needleJet.part === null
        ? "not known"
        : `${toMillimetre(setup.needleJet.part).toFixed(2)} mm`;
  }
}

export function partChanges(now: Situation, candidate: Candidate): readonly PartChange[] {
  return candidate.changes.map((part) => ({
    part,
    from: partValue(part, now.setup),
    to: partValue(part, candidate.situation.setup),
    inDrawer: !candidate.toBuy.includes(part),
  }));
}

/** A heading for a change: "Main jet 175 to 180", "Clip up, groove 3 to 2". */
export function changeTitle(now: Situation, candidate: Candidate): string {
  const parts = candidate.changes.map((part) => {
    const { setup } = now;
    const to = candidate.situation.setup;
    if (part === "clip" && setup.clip.part !== null && to.clip.part !== null) {
      const way = to.clip.part > setup.clip.part ? "down" : "up";
      return `clip ${way}, groove ${setup.clip.part} to ${to.clip.part}`;
    }
    return `${partName(part, setup)} ${fromTo(part, setup, to)}`;
  });
  return upperFirst(parts.join("; "));
}

/** "175 to 180"; a word that both values share is said once: "1½ to 2 turns out", "cutaway 3.5 to 4.0 mm". */
function fromTo(part: LabourPart, before: Setup, after: Setup): string {
  const from = partValue(part, before);
  const to = partValue(part, after);
  if (part === "screw" && before.screw.part !== null)
    return `${turnsText(before.screw.part.turnsOut)} to ${to}`;
  if (part === "slide" || part === "needleJet")
    return `${from.replace(/ mm$/, "")} to ${to.replace(/^cutaway /, "")}`;
  return `${from} to ${to}`;
}

/** The jets in full, for a person who must find the right packet. */
export const jetInFull = (setup: Setup, place: "main" | "pilot"): string =>
  setup[place].part === null ? "not known" : jetText(setup[place].part);
