import type { Heard } from "@jetwright/core";

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;

/** The figures a record keeps: medians over the take, and how many times each was measured. */
export function figuresOf({ events }: Heard): Record<string, number> {
  const figures: Record<string, number> = {};
  const put = (name: string, values: readonly number[], digits: number): void => {
    if (values.length > 0) figures[name] = Number(middle(values).toFixed(digits));
  };
  const chops = events.filter((event) => event.kind === "chop");
  const snaps = events.filter((event) => event.kind === "snap");
  const hunting = events.find((event) => event.kind === "hunting");
  put(
    "idleRpm",
    events.flatMap((event) => (event.kind === "idle" ? [event.rpm] : [])),
    0,
  );
  put(
    "hangSeconds",
    chops.map((chop) => chop.hangSeconds),
    2,
  );
  put(
    "undershootPercent",
    chops.flatMap((chop) => chop.undershootPercent ?? []),
    1,
  );
  put(
    "settleSeconds",
    chops.flatMap((chop) => chop.settleSeconds ?? []),
    2,
  );
  put(
    "riseSeconds",
    snaps.map((snap) => snap.riseSeconds),
    2,
  );
  put(
    "bogPercent",
    snaps.map((snap) => snap.bogPercent),
    1,
  );
  if (chops.length > 0) figures.closings = chops.length;
  if (hunting !== undefined) figures.huntingPercent = Number(hunting.swingPercent.toFixed(1));
  if (events.some((event) => event.kind === "stall")) figures.stalls = 1;
  if (events.length > 0)
    figures.confidence = Number(Math.min(...events.map(({ confidence }) => confidence)).toFixed(2));
  return figures;
}
