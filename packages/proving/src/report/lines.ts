import type { Timed } from "../measure/run-all.ts";
import { bandCover, brier, reliability, summarise } from "../measure/summary.ts";

const percent = (share: number): string => `${(100 * share).toFixed(1)}%`;
const ride = (value: number | null): string => (value === null ? "never" : String(value));

/** Figures as plain lines, for the one who tunes. */
export function summaryLines(policies: readonly string[], all: readonly Timed[]): readonly string[] {
  return policies.flatMap((policy) => {
    const own = all.filter((each) => each.policy === policy);
    const groups = [
      ["all", own],
      ["sound", own.filter(({ fault }) => fault === null)],
      ["faulty", own.filter(({ fault }) => fault !== null)],
      ["good", own.filter(({ rider }) => rider === "good")],
    ] as const;
    const lines = groups.map(([name, list]) => {
      const s = summarise(policy, list);
      return `${policy.padEnd(20)} ${name.padEnd(6)} ${String(s.bikes).padStart(5)}  rides ${ride(s.median.value)} / ${ride(s.ninetieth.value)}  never ${percent(s.never.share)}  stays ${ride(s.stayMedian.value)} / ${ride(s.stayNinetieth.value)}  end ${percent(s.cleanAtEnd.share)}  made ${s.rides.toFixed(1)} min ${s.minutes.toFixed(0)}  lean ${percent(s.lean.share)} worst ${percent(s.leanest)} lost ${percent(s.lost.share)}  found ${percent(s.found.share)} in time ${percent(s.foundInTime.share)} checks ${s.checks.toFixed(1)} bought ${s.bought.toFixed(2)}`;
    });
    const ms = own.reduce((sum, { milliseconds }) => sum + milliseconds, 0) / own.length;
    const honesty = own.some(({ notes }) => notes.bands.length > 0)
      ? [
          ...[false, true].map(
            (broken) =>
              `  bands ${broken ? "faulty" : "sound "} ${bandCover(own, broken)
                .map(
                  ({ at, half, ninety, bias, spread }) =>
                    `${at}: ${(100 * half.share).toFixed(0)}/${(100 * ninety.share).toFixed(0)} z ${bias.toFixed(2)} sd ${(100 * spread).toFixed(1)}`,
                )
                .join(" | ")}`,
          ),
          `  faults ${reliability(own.flatMap(({ notes }) => notes.faults))
            .map(({ said, true: t }) => `${said.toFixed(2)}>${t.share.toFixed(2)}(${t.of})`)
            .join(" ")} brier sound ${brier(own.flatMap(({ notes }) => notes.sound)).toFixed(3)}`,
        ]
      : [];
    return [...lines, ...honesty, `  ${ms.toFixed(0)} ms a bike`];
  });
}
