import { bayesianOptimiser } from "./bayesian-optimiser.ts";
import { carefulTuner } from "./careful-tuner.ts";
import { oracle } from "./oracle.ts";
import { ours } from "./ours.ts";
import type { Policy } from "./policy.ts";
import { symptomChart } from "./symptom-chart.ts";

export const POLICIES: readonly Policy[] = [
  ours(false),
  ours(true),
  symptomChart,
  carefulTuner,
  bayesianOptimiser,
  oracle,
];
