import {
  cutawayText,
  type HowKnown,
  jetText,
  type Known,
  needleJetText,
  needleText,
  SETUP_ORDER,
  type Setup,
  type SetupPart,
  toMillimetre,
  turnsText,
} from "@jetwright/core";

export interface PartRow {
  readonly part: SetupPart;
  /** What is fitted, without its name; null when nobody knows. */
  readonly value: string | null;
  readonly how: HowKnown;
}

/** Every part of a setup as a row: its value without its name, and how it is known. */
export const partRows = (setup: Setup): readonly PartRow[] =>
  SETUP_ORDER.map((part) => {
    const fitted: Known<unknown> = setup[part];
    return { part, value: fitted.part === null ? null : partValue(setup, part), how: fitted.how };
  });

const turnsOut = (turns: number): string =>
  `${turnsText(turns)} ${turns > 0 && turns <= 1 ? "turn" : "turns"} out`;

function partValue(setup: Setup, part: SetupPart): string {
  switch (part) {
    case "main":
    case "pilot":
    case "mainAirJet":
    case "pilotAirJet":
      return jetText(setup[part].part!);
    case "needle":
      return needleText(setup.needle.part!).replace(/^needle /, "");
    case "clip": {
      const grooves = setup.needle.part?.grooves;
      const groove = setup.clip.part!;
      const shim = Number.isInteger(groove) ? "" : " + half-step shim";
      return `${Math.floor(groove)}${grooves === undefined ? "" : ` of ${grooves}`} from the top${shim}`;
    }
    case "needleJet":
      return needleJetText(setup.needleJet.part!).replace(/^needle jet /, "");
    case "cutaway":
      return cutawayText(setup.cutaway.part!).replace(/^slide with /, "");
    case "screw":
      return turnsOut(setup.screw.part!.turnsOut);
    case "fuelLift":
      return `${toMillimetre(setup.fuelLift.part!).toFixed(1)} mm below the needle jet's top`;
  }
}
