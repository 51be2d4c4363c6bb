// The only door of the package: made recordings with a known truth. For tests and measurement only.
export { anyBuild, type Build } from "./engine.ts";
export { NOISES, type NoiseKind } from "./noises.ts";
export { sparkChannel } from "./sparks.ts";
export type { Truth } from "./speed-script.ts";
export { noEngine, type Planted, STORIES, type Story, type Take, type TakeSetting, take } from "./take.ts";
export { type TruthFigures, truthFigures } from "./truth-figures.ts";
