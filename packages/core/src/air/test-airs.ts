import { english } from "../words/en.ts";
import { type Warning, warningText } from "../words/warning.ts";
import type { AirEstimate } from "./air-estimate.ts";
import { type AirInput, airFrom } from "./air-from.ts";
import type { TypedHumidity } from "./typed-humidity.ts";
import type { TypedPressure } from "./typed-pressure.ts";

// Readings and short cuts for the tests of airFrom.

export const half: TypedHumidity = { kind: "relative", percent: 50 };
export const at950: TypedPressure = { kind: "station", value: 950, unit: "hPa" };
export const base: AirInput = { temperature: { value: 20, unit: "C" }, pressure: at950, humidity: half };

export const taken = (input: Partial<AirInput>): AirEstimate => {
  const air = airFrom({ ...base, ...input });
  if (!air.ok) throw new Error(`${air.reason}: ${air.detail}`);
  return air.value;
};
export const refused = (input: Partial<AirInput>) => {
  const air = airFrom({ ...base, ...input });
  if (air.ok) throw new Error(`taken: ${JSON.stringify(air.value)}`);
  return air;
};
export const codes = (air: AirEstimate) => air.warnings.map((w) => w.code);
/** The first warning of this code in English; empty where there is none. */
export function text({ warnings }: { readonly warnings: readonly Warning[] }, code: string): string {
  const found = warnings.find((w) => w.code === code);
  return found === undefined ? "" : warningText(found, english);
}
export const doubt = (air: AirEstimate, cause: string) =>
  air.doubts.find((d) => d.cause === cause)?.relativeSd;
export const station = (value: number, unit?: TypedPressure["unit"]): TypedPressure =>
  unit === undefined ? { kind: "station", value } : { kind: "station", value, unit };
export const seaLevel = (value: number, unit?: TypedPressure["unit"]): TypedPressure =>
  unit === undefined ? { kind: "sea-level", value } : { kind: "sea-level", value, unit };
export const metres = (value: number) => ({ value, unit: "m" }) as const;
