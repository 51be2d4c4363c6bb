import type { Words } from "../en.ts";
import { plainFigure } from "../figures.ts";

const PARTS: Words["pictures"]["parts"] = {
  pilot: "Leerlauf",
  slide: "Schieber",
  needle: "Nadel",
  main: "Hauptdüse",
};

/** Which part has the say, with its article. */
const THE: Words["pictures"]["parts"] = {
  pilot: "die Leerlaufdüse",
  slide: "der Schieber",
  needle: "die Düsennadel",
  main: "die Hauptdüse",
};

const amount = (percent: number): string => {
  const whole = Math.round(percent);
  if (whole === 0) return "richtig";
  return whole > 0 ? `${whole} % fett` : `${-whole} % mager`;
};

const kindOf = (kind: "air" | "fuel"): string => (kind === "air" ? "Luftschraube" : "Gemischschraube");
const turnsOf = (turns: string, one: boolean): string =>
  `${turns} ${one ? "Umdrehung" : "Umdrehungen"} offen`;

export const pictures: Words["pictures"] = {
  rich: "fett",
  lean: "mager",
  right: "richtig",
  amount,
  opening: {
    closed: "zu",
    "1/8": "⅛",
    "1/4": "¼",
    "1/2": "½",
    "3/4": "¾",
    full: "voll",
  },
  spokenOpening: (name) => (name === "closed" ? "Gas zu" : name === "full" ? "Vollgas" : `Bei ${name} Gas`),
  parts: PARTS,
  mixture: {
    label: "Gemisch über der Gasöffnung",
    hint: "Berühr das Bild oder nimm die Pfeiltasten, um es abzulesen.",
    now: "jetzt",
    after: "danach",
    read: (opening, now, low, high) =>
      `${opening}: ${amount(now)}, wohl zwischen ${amount(low)} und ${amount(high)}.`,
    readAfter: (after) => `Nach der Änderung: ${amount(after)}.`,
    governs: (part) => `Hier bestimmt vor allem ${THE[part]}.`,
    column: {
      opening: "Gas",
      now: "Gemisch jetzt",
      between: "Wohl zwischen",
      after: "Nach der Änderung",
    },
    between: (low, high) => `${amount(low)} und ${amount(high)}`,
    throttle: "Gas",
  },
  section: {
    filter: "Filter",
    engine: "Motor",
    usualMark: "(üblich)",
    clip: (groove) => `Clip in Kerbe ${plainFigure(groove, "de")}`,
    needle: (marks) => (marks === null || marks === "" ? "Nadel" : `Nadel ${marks}`),
    cutaway: (millimetres) => `Ausschnitt ${millimetres}`,
    needleJet: (millimetres) => `Nadeldüse ${millimetres}`,
    main: (number) => (number === null ? "Hauptdüse" : `Hauptdüse ${plainFigure(number, "de")}`),
    pilot: (number) => (number === null ? "Leerlaufdüse" : `Leerlaufdüse ${plainFigure(number, "de")}`),
    screw: (kind, turns) => `${kindOf(kind)} ${turns}`,
    open: "Gas geben",
    leads: (part) =>
      ({
        pilot: "Das Leerlaufsystem bestimmt den größten Teil des Kraftstoffs.",
        slide: "Der Ausschnitt des Schiebers bestimmt, wie stark der Kraftstoff angesaugt wird.",
        needle: "Der Spalt neben der Düsennadel bestimmt den größten Teil des Kraftstoffs.",
        main: "Die Hauptdüse bestimmt den größten Teil des Kraftstoffs.",
      })[part],
    gap: (millimetres) => `Der Spalt neben der Düsennadel ist auf jeder Seite ${millimetres} mm breit.`,
    widened: "Hier ist er viel breiter gezeichnet, als er ist, damit man ihn sieht.",
    millimetres: (figure) => `${figure} mm`,
    sharesTitle: "Anteile und Stufen in Zahlen",
    pilotShare: "Leerlaufsystem",
    needleShare: "Düsennadel und Nadeldüse",
    mainShare: "Hauptdüse",
    clipStep: "Clip eine Kerbe tiefer",
    slideStep: "Ausschnitt einen halben Millimeter kleiner",
    screwStep: (kind) =>
      kind === "air"
        ? "Luftschraube eine halbe Umdrehung hinein"
        : "Gemischschraube eine halbe Umdrehung heraus",
    richer: (percent) => `${percent} % fetter`,
    usual: (names) => `Nicht bekannt, darum wie üblich gezeichnet: ${names}.`,
    usualNames: {
      pilot: "Leerlaufdüse",
      main: "Hauptdüse",
      needle: "Düsennadel",
      profile: "Form der Düsennadel",
      clip: "Clipkerbe",
      needleJet: "Nadeldüse",
      cutaway: "Ausschnitt",
      screw: "Stellung der Schraube",
      fuelLift: "Kraftstoffstand",
      seatToJet: "Abstand vom Clip zur Nadeldüse",
      idleLift: "Hub im Leerlauf",
    },
  },
  clip: {
    blunt: "stumpf",
    now: (clip) => `Jetzt: ${clip}.`,
    goesTo: (clip, richer) => `Kommt in: ${clip}, ${richer ? "fetter" : "magerer"}.`,
    richer: "fetter",
    lower: "Clip eine Kerbe tiefer: Die Nadel sitzt höher.",
    leaner: "magerer",
    higher: "Clip eine Kerbe höher: Die Nadel sitzt tiefer.",
    count: "Kerbe 1 ist die oberste, am stumpfen Ende.",
    rule: "Kerbe 1 ist die oberste, am stumpfen Ende; eine tiefere Kerbe (höhere Zahl) hebt die Nadel und ist fetter.",
    in: (groove, of, shim) =>
      `Clip in Kerbe ${groove} von ${of}, von oben${shim ? ", mit Scheibe für eine halbe Stufe darunter" : ""}`,
  },
  screw: {
    filter: "Filter",
    engine: "Motor",
    out: "heraus",
    in: "hinein",
    now: (turns, one) => `Jetzt: ${turnsOf(turns, one)}.`,
    goesTo: (turns, one, by, out, richer) =>
      `Kommt auf ${turnsOf(turns, one)}: ${by} ${out ? "heraus" : "hinein"}, ${richer ? "fetter" : "magerer"}.`,
    richer: "fetter",
    leaner: "magerer",
    turnOut: "herausdrehen, gegen den Uhrzeigersinn.",
    turnIn: "hineindrehen, im Uhrzeigersinn.",
    rule: {
      air: "Eine Luftschraube sitzt auf der Filterseite des Schiebers: heraus ist magerer, hinein fetter.",
      fuel: "Eine Gemischschraube sitzt auf der Motorseite des Schiebers: heraus ist fetter, hinein magerer.",
    },
  },
  trend: {
    title: "Von Fahrt zu Fahrt",
    label: "Gemisch bei Vollgas, halbem und einem Achtel Gas, Fahrt für Fahrt",
    note: "So, wie es alles bisher Gesagte erkennen lässt. Ein gepunkteter Strich: Vor dieser Fahrt wurden Teile gewechselt.",
    few: "Ein Verlauf braucht mindestens zwei Fahrten.",
    top: "voll",
    middle: "1/2",
    bottom: "1/8",
    ride: (number) => `Fahrt ${number}`,
    changed: "Teile gewechselt",
    column: { ride: "Fahrt", top: "Vollgas", middle: "Halbgas", bottom: "Ein Achtel" },
  },
  carburetor: {
    title: "Vergaser",
    now: "Wie verbaut",
    needle: "Clip",
    screw: "Schraube",
    leads: "Welches Teil wo bestimmt",
    back: "Verbaut",
  },
};
