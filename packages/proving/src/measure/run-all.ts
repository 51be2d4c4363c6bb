import { Worker } from "node:worker_threads";
import type { Work } from "../work.ts";
import type { Outcome } from "./run-bike.ts";

export interface Timed extends Outcome {
  readonly milliseconds: number;
}

/** Runs the bikes on several threads and hands over each as it is done, in whatever order the threads are. */
export async function runAll(
  script: string,
  { tasks, kind }: Work,
  threads: number,
  take: (outcomes: readonly Timed[]) => void,
): Promise<void> {
  await Promise.all(
    Array.from({ length: threads }, (_, thread) => {
      const own = tasks.filter((_task, i) => i % threads === thread);
      return new Promise<void>((resolve, reject) => {
        const worker = new Worker(script, { workerData: { tasks: own, kind } satisfies Work });
        worker.on("message", take);
        worker.on("error", reject);
        worker.on("exit", () => resolve());
      });
    }),
  );
}
