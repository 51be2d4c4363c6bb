import type { Step } from "@jetwright/core";

/** Whether there is anything to be sure of: a stop leaves no doubt, and a ride that only learns more has none. */
export const tellsSureness = ({ kind, id }: Step): boolean =>
  kind !== "stop" && !(kind === "ride" && id === "ride");
