import { Worker } from "node:worker_threads";
import type { Work } from "../work.ts";
import type { Outcome } from "./run-bike.ts";

export interface Timed extends Outcome {
  readonly milliseconds: number;
}

/** Runs bikes on several threads; the result is in the order of the seeds, whatever the threads did. */
export async function runAll(
  script: string,
  work: Work,
  threads: number,
  tell: (done: number) => void,
): Promise<readonly Timed[]> {
  const place = new Map(work.seeds.map((seed, i) => [seed, i]));
  const all: (readonly Timed[])[] = new Array(work.seeds.length);
  let done = 0;
  await Promise.all(
    Array.from({ length: threads }, (_, thread) => {
      const seeds = work.seeds.filter((_seed, i) => i % threads === thread);
      return new Promise<void>((resolve, reject) => {
        const worker = new Worker(script, { workerData: { ...work, seeds } satisfies Work });
        worker.on("message", (outcomes: readonly Timed[]) => {
          all[place.get(outcomes[0]!.seed)!] = outcomes;
          done++;
          tell(done);
        });
        worker.on("error", reject);
        worker.on("exit", () => resolve());
      });
    }),
  );
  return all.flat();
}
