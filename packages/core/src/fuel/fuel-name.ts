import { accept, type Outcome, refuse } from "../units/outcome.ts";
import { ETHANOL_LIMIT, type FuelRefusal, outsideTheTool } from "./fuel-use.ts";
import type { FuelShares } from "./viscosity.ts";

const PLAIN = new Map<string, FuelShares>([
  ["petrol without ethanol", { ethanol: 0, alkylate: 0 }],
  ["ethanol-free", { ethanol: 0, alkylate: 0 }],
  ["ethanol free", { ethanol: 0, alkylate: 0 }],
  ["alkylate", { ethanol: 0, alkylate: 1 }],
  ["alkylate petrol", { ethanol: 0, alkylate: 1 }],
]);
const ALCOHOLS = /^(m[0-9]{2,3}|methanol|ethanol|alcohol|nitro|nitromethane)$/;

/**
 * Reads what a fuel is called: "E0" to "E30", "alkylate", "ethanol-free". The number after E is the most ethanol
 * the pump may hold; it is taken as what is in it. Refuses alcohol fuels as outside the tool, and asks where the
 * name leaves the ethanol open ("petrol", "98").
 */
export function readFuelName(typed: string): Outcome<FuelShares, FuelRefusal | "ambiguous" | "not a fuel"> {
  const name = typed.trim().toLowerCase().replace(/\s+/g, " ");
  const plain = PLAIN.get(name);
  if (plain) return accept(plain);
  if (ALCOHOLS.test(name)) return refuse("outside the tool", outsideTheTool(typed.trim()));
  const ethanol = /^e ?-?([0-9]{1,3})$/.exec(name);
  if (ethanol) {
    const share = Number(ethanol[1]) / 100;
    if (share > 1)
      return refuse("ethanol", `${typed.trim()} would be more than all ethanol; read the pump again.`);
    if (share > ETHANOL_LIMIT) return refuse("outside the tool", outsideTheTool(typed.trim()));
    return accept({ ethanol: share, alkylate: 0 });
  }
  if (/^(petrol|gas|gasoline|super|pump|pump gas|premium|regular|(ron ?)?[89][0-9]|1[01][0-9])$/.test(name)) {
    return refuse(
      "ambiguous",
      `"${typed.trim()}" does not say how much ethanol is in it, and octane does not change the mixture. Read E0, E5 or E10 off the pump.`,
    );
  }
  return refuse(
    "not a fuel",
    `"${typed.trim()}" is not a fuel this tool knows. Give E0, E5, E10 or alkylate.`,
  );
}
