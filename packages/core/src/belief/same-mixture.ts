import type { SignSeen } from "./observation.ts";
import { nominalShift } from "./state.ts";

/** Mixtures at a stretch that differ by less than this, ln ratio, are one to a rider. Estimate: half a jet step. */
const ONE_TO_A_RIDER = 0.02;

/** What was noticed where, as far as its mixture goes. */
type Place = Pick<SignSeen, "stretch" | "shift">;

/** True when the stretch ran at nearly the same mixture both times, whatever else was fitted or blew. Rule B7. */
export const sameMixture = (a: Place, b: Place): boolean =>
  Math.abs(nominalShift(a.stretch, a.shift) - nominalShift(b.stretch, b.shift)) < ONE_TO_A_RIDER;
