import { SPOKEN_OPENINGS } from "../units/opening.ts";
import type { CoreWords } from "./core-words.ts";
import type { PartStand } from "./part-stand.ts";

// For tests of a language's words.

/** Every text of a catalogue that stands by itself, with its path. */
export function textsOf(words: unknown, path = ""): readonly (readonly [string, string])[] {
  if (typeof words === "string") return [[path, words]];
  if (typeof words !== "object" || words === null) return [];
  return Object.entries(words).flatMap(([key, value]) => textsOf(value, `${path}/${key}`));
}

/** A sentence made with sample arguments, and what must be found in it. */
export interface Sample {
  readonly said: string;
  readonly given: readonly string[];
}

const MAIN: PartStand = { part: "main", number: 177 };
const SCREW = { part: "screw", kind: "fuel", turns: 1.5 } as const;

/** Every sentence that takes an argument, made once or more. */
export function spokenSamples({ figure, openings, parts, reasons, steps }: CoreWords): readonly Sample[] {
  const sample = (said: string, ...given: readonly string[]): Sample => ({ said, given });
  const [, eighth, quarter] = SPOKEN_OPENINGS as readonly [never, never, never];
  const { change, check, mend, readParts, ride, test } = steps;
  return [
    sample(figure(172), "172"),
    sample(openings.at(eighth), "1/8"),
    sample(parts.value(MAIN), "177"),
    sample(parts.value({ part: "main", number: 172.5 }), figure("172.5")),
    sample(parts.value({ part: "clip", groove: 3 }), "3"),
    sample(parts.value({ part: "clip", groove: 2.5 }), figure("2.5")),
    sample(parts.value({ part: "needle", marks: "XQ7", groove: 2 }), "XQ7", "2"),
    sample(parts.value({ part: "slide", cutawayMm: 3.5 }), figure("3.5"), "mm"),
    sample(parts.value(SCREW), "1½"),
    sample(parts.value({ part: "screw", kind: "air", turns: 1.3 }), figure("1.3")),
    sample(parts.value({ part: "needleJet", boreMm: 2.72 }), figure("2.72"), "mm"),
    sample(parts.turnsOut(0.75), "¾"),
    sample(parts.jet({ number: 180, numbering: "bore", maker: "Zorn" }), "180", "1/100 mm", "Zorn"),
    sample(parts.jet({ number: 172.5, numbering: "flow", maker: "" }), figure("172.5")),
    sample(
      parts.change([
        { from: { part: "pilot", number: 42 }, to: { part: "pilot", number: 45 } },
        { from: { part: "needle", marks: "N1", groove: 3 }, to: { part: "needle", marks: "N2", groove: 2 } },
        { from: { part: "slide", cutawayMm: 3.5 }, to: { part: "slide", cutawayMm: 4 } },
        { from: { part: "needleJet", boreMm: 2.7 }, to: { part: "needleJet", boreMm: 2.72 } },
        { from: SCREW, to: { ...SCREW, turns: 2 } },
      ]),
      ...["42", "45", "N1", "N2", figure("3.5"), figure("4.0"), figure("2.70"), figure("2.72"), "1½", "2"],
    ),
    sample(parts.change([{ from: { part: "clip", groove: 3 }, to: { part: "clip", groove: 4 } }]), "3", "4"),
    sample(reasons.notThere("ZORN"), "ORN"),
    sample(reasons.felt("better", quarter), "1/4"),
    sample(reasons.tested("ZORN", 2.5), "ZORN", "2½"),
    sample(reasons.tested("ZORN", null), "ZORN"),
    sample(reasons.foundFaulty("ZORN"), "ZORN"),
    sample(mend.title("zorn"), "zorn"),
    sample(check.expect("zorn", 7, "ZORN."), "zorn", "7", "ORN."),
    sample(check.wrongIf("zorn"), "orn"),
    sample(test.titleAt("ZORN", eighth), "ZORN", "1/8"),
    sample(test.expect("ZORN", 6), "ORN", "6"),
    sample(change.how.main("ZORN"), "ZORN"),
    sample(change.how.pilot("ZORN"), "ZORN"),
    sample(change.how.clip({ part: "clip", groove: 3 }, { part: "clip", groove: 2 }), "3", "2"),
    sample(change.how.needle({ part: "needle", marks: "XQ7", groove: 4 }), "XQ7", "4"),
    sample(change.how.slide({ part: "slide", cutawayMm: 3.5 }), figure("3.5")),
    sample(change.how.screw("fuel", SCREW), "1½"),
    sample(change.how.needleJet({ part: "needleJet", boreMm: 2.72 }), figure("2.72")),
    sample(change.jet({ number: 180, numbering: "bore", maker: "Zorn" }), "180", "Zorn"),
    sample(change.expect("leaner", 4, quarter, "zorn"), "4 %", "1/4", "zorn"),
    sample(change.expect("richer", 0, quarter, "zorn"), "1 %", "1/4", "zorn"),
    sample(change.wrongIf("zorn"), "orn"),
    sample(change.undo([MAIN, SCREW]), "177", "1½"),
    sample(change.notInDrawer([MAIN, { part: "pilot", number: 45 }]), "177", "45"),
    sample(change.togetherSaves([MAIN, SCREW], 25), "25"),
    sample(change.oneAtATimeCosts(25), "25"),
    sample(readParts.title(["pilot", "screw", "needle", "clip", "main"])),
    sample(ride.again([eighth, quarter]), "1/8", "1/4"),
    ...ride.how("free").map((line) => sample(line)),
  ];
}

/** English turned into no language: every text marked, nothing else changed. */
export function marked<Words>(words: Words): Words {
  if (typeof words === "string") return `¿${words}?` as Words;
  if (typeof words === "function")
    return ((...given: readonly unknown[]) => marked(words(...given))) as Words;
  if (Array.isArray(words)) return words.map((each) => marked(each)) as Words;
  if (typeof words !== "object" || words === null) return words;
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key, marked(value)])) as Words;
}
