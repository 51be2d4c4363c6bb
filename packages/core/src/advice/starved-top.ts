import type { FaultId } from "../belief/catalogue.ts";
import type { Leaned } from "../belief/reading.ts";

/** For how long the throttle is held at 3/4 or more. */
export type HowLong = "seconds" | "held";

/** Small holes that let air past: much at idle, little against the air of full throttle. Estimate. */
const LEAK: Leaned = { by: 0.02, sd: 0.02 };

/**
 * How much leaner a fault makes 3/4 to full throttle than the jets are, ln ratio. A bowl of 40 to 60 ml feeds full
 * throttle for 12 to 20 s at 150 to 200 ml/min [memory], so a poor supply takes little in a few seconds and, held for
 * long, as much as it falls short. A float some millimetres low takes little head from the main jet at once, and more
 * where the valve can no longer follow; every second wrong float stands high. Estimates throughout.
 */
export const STARVES: Readonly<Record<HowLong, Partial<Readonly<Record<FaultId, Leaned>>>>> = {
  seconds: {
    "fuel-supply": { by: 0.02, sd: 0.02 },
    "float-level": { by: 0.01, sd: 0.02 },
    "air-leak": LEAK,
    "gearbox-side-seal": LEAK,
    "air-filter": { by: 0, sd: 0.03 },
  },
  held: {
    "fuel-supply": { by: 0.2, sd: 0.12 },
    "float-level": { by: 0.02, sd: 0.05 },
    "air-leak": LEAK,
    "gearbox-side-seal": LEAK,
    "air-filter": { by: 0, sd: 0.03 },
  },
};
