import { parentPort, workerData } from "node:worker_threads";
import { runBike } from "./measure/run-bike.ts";
import { POLICIES } from "./policies/all.ts";
import type { Rider } from "./world/rider.ts";

/** One bike and the policies that are to work on it. */
export interface Task {
  readonly seed: string;
  readonly policies: readonly string[];
}

/** What a worker is asked to do. */
export interface Work {
  readonly tasks: readonly Task[];
  readonly kind: Rider["kind"] | null;
}

// Bike by bike, all policies on one bike before the next: a run that is cut short is still paired.
if (parentPort !== null) {
  const { tasks, kind } = workerData as Work;
  for (const { seed, policies } of tasks) {
    const done = POLICIES.filter(({ name }) => policies.includes(name)).map((policy) => {
      const from = performance.now();
      const outcome = runBike(seed, policy, kind ?? undefined);
      return { ...outcome, milliseconds: performance.now() - from };
    });
    parentPort.postMessage(done);
  }
}
