import { parentPort, workerData } from "node:worker_threads";
import { runBike } from "./measure/run-bike.ts";
import { POLICIES } from "./policies/all.ts";
import type { Rider } from "./world/rider.ts";

/** What a worker is asked to do: some bikes by some policies. */
export interface Work {
  readonly seeds: readonly string[];
  readonly policies: readonly string[];
  readonly kind: Rider["kind"] | null;
  /** The tool, the slow one, works on so many of the seeds; a seed's number is its last word. */
  readonly toolBikes: number;
}

// Bike by bike, all policies on one bike before the next: a run that is cut short is still paired.
if (parentPort !== null) {
  const { seeds, policies, kind, toolBikes } = workerData as Work;
  for (const seed of seeds) {
    const number = Number(seed.split("-").at(-1));
    const asked = POLICIES.filter(
      ({ name }) => policies.includes(name) && (number < toolBikes || !name.startsWith("ours")),
    );
    const done = asked.map((policy) => {
      const from = performance.now();
      const outcome = runBike(seed, policy, kind ?? undefined);
      return { ...outcome, milliseconds: performance.now() - from };
    });
    parentPort.postMessage(done);
  }
}
