import { parentPort, workerData } from "node:worker_threads";
import { runBike } from "./measure/run-bike.ts";
import { POLICIES } from "./policies/all.ts";
import type { Rider } from "./world/rider.ts";

/** What a worker is asked to do: some bikes by some policies. */
export interface Work {
  readonly seeds: readonly string[];
  readonly policies: readonly string[];
  readonly kind: Rider["kind"] | null;
}

// Bike by bike, all policies on one bike before the next: a run that is cut short is still paired.
if (parentPort !== null) {
  const { seeds, policies, kind } = workerData as Work;
  for (const seed of seeds) {
    const done = POLICIES.filter(({ name }) => policies.includes(name)).map((policy) => {
      const from = performance.now();
      const outcome = runBike(seed, policy, kind ?? undefined);
      return { ...outcome, milliseconds: performance.now() - from };
    });
    parentPort.postMessage(done);
  }
}
