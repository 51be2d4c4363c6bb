import { adviceBench } from "./advice-bench.ts";
import { beliefBench } from "./belief-bench.ts";
import type { Bench } from "./bench-shape.ts";
import { searchBench, wholeDrawerBench } from "./search-bench.ts";
import { soundBench } from "./sound-bench.ts";

/** Every bench; one line each. */
export const BENCHES: readonly Bench[] = [
  beliefBench,
  adviceBench,
  searchBench,
  wholeDrawerBench,
  soundBench,
];
