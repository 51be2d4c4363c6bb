import type { FaultId } from "./catalogue.ts";
import type { Factor } from "./factor.ts";
import type { Compared, Measured, SignSeen } from "./observation.ts";

/** One piece of evidence, ready for inference: the direction it looks along and its likelihood there. */
export interface Site {
  readonly observation: SignSeen | Compared | Measured;
  /** Sorts the sites the same way whatever order the records came in. */
  readonly key: string;
  readonly along: Float64Array;
  readonly sound: Factor;
  /** Only the faults under which its likelihood is another one. */
  readonly faults: ReadonlyMap<FaultId, Factor>;
}

export const factorUnder = (site: Site, fault: FaultId | null): Factor =>
  (fault === null ? undefined : site.faults.get(fault)) ?? site.sound;
