import { AIR_CHECKS } from "./air.ts";
import { BASELINE_CHECKS } from "./baseline.ts";
import type { ReferenceCheck } from "./check.ts";
import { FUEL_CHECKS } from "./fuel.ts";
import { METERING_CHECKS } from "./metering.ts";
import { PARTS_CHECKS } from "./parts.ts";
import { SOUND_CHECKS } from "./sound.ts";
import { STANDARD_ATMOSPHERE_CHECKS } from "./standard-atmosphere.ts";
import { TEXTBOOK_CARBURETOR_CHECKS } from "./textbook-carburetor.ts";
import { WEATHER_REPORT_CHECKS } from "./weather-report.ts";

/** Every outside check, by topic. A new topic file is added here and nowhere else. */
export const REFERENCES: readonly { readonly topic: string; readonly checks: readonly ReferenceCheck[] }[] = [
  { topic: "air", checks: [...AIR_CHECKS, ...STANDARD_ATMOSPHERE_CHECKS] },
  { topic: "weather report", checks: WEATHER_REPORT_CHECKS },
  { topic: "fuel", checks: FUEL_CHECKS },
  { topic: "metering", checks: METERING_CHECKS },
  { topic: "textbook carburetor", checks: TEXTBOOK_CARBURETOR_CHECKS },
  { topic: "parts", checks: PARTS_CHECKS },
  { topic: "baseline", checks: BASELINE_CHECKS },
  { topic: "sound", checks: SOUND_CHECKS },
];
