import { describe, expect, test } from "vitest";
import { evidenceFrom, SCREW_PEAK, SCREW_STRETCH } from "./evidence.ts";
import { screwPeakSd } from "./screw-peak.ts";
import { story, tested } from "./test-stories.ts";
import { weighingOf } from "./test-weighing.ts";

const sdOf = (numbers: Record<string, number>): number => {
  const [seen] = evidenceFrom(
    story({ tests: [tested("screw-sweep-air", "middle", { numbers: { bestTurns: 1.5, ...numbers } })] }),
  ).observations;
  if (seen?.kind !== "measured") throw new RangeError("No measurement");
  return seen.sd;
};

describe("the spread of a best idle", () => {
  test("found by feel it is what it was; by engine speed it follows from the place's own spread", () => {
    expect(sdOf({})).toBe(SCREW_PEAK.sd);
    expect(sdOf({ bestTurnsSd: 0 })).toBe(SCREW_PEAK.sd);
    expect(sdOf({ bestTurnsSd: 0.08 })).toBeLessThan(0.024);
    expect(sdOf({ bestTurnsSd: 0.08 })).toBeGreaterThan(0.02);
    expect(sdOf({ bestTurnsSd: 0.5 })).toBeGreaterThan(SCREW_PEAK.sd);
  });

  test("grows with the turns as the mixture does: half a turn of an air screw is worth 2.4 to 3.5 % at idle", () => {
    // From the metering figures of a screw at 1.5 turns: +3.5 % half a turn in, −2.4 % half a turn out.
    const part = (sd: number): number => Math.sqrt(sd * sd - 0.02 * 0.02);
    const half = part(sdOf({ bestTurnsSd: 0.5 }));
    expect(half).toBeGreaterThan(0.024 * 0.6);
    expect(half).toBeLessThan(0.035 * 1.2);
    expect(part(sdOf({ bestTurnsSd: 0.25 })) / half).toBeCloseTo(0.5, 1);
  });

  test("stays by feel where the situation cannot be worked out", () => {
    expect(screwPeakSd(0.03, 1.5, 0.1, () => null, SCREW_STRETCH)).toBe(0.03);
  });

  test("several sweeps in one sitting share how far best idle is from right; on another day they do not", () => {
    const together = (numbers: Record<string, number>, hoursApart: number, count: number): number => {
      const tests = Array.from({ length: count }, (_, i) =>
        tested("screw-sweep-air", "middle", {
          record: `t${i}`,
          at: i * hoursApart * 3600_000,
          numbers: { bestTurns: 1.5, ...numbers },
        }),
      );
      const seen = evidenceFrom(story({ tests })).observations;
      expect(seen).toHaveLength(count);
      return (
        1 / Math.sqrt(seen.reduce((sum, each) => sum + (each.kind === "measured" ? each.sd ** -2 : 0), 0))
      );
    };
    const one = together({ bestTurnsSd: 0.08 }, 1, 1);
    // What is shared stays, what is the place's own is divided by how many there are.
    const own = one * one - 0.02 ** 2;
    expect(together({ bestTurnsSd: 0.08 }, 1, 4)).toBeCloseTo(Math.sqrt(0.02 ** 2 + own / 4), 9);
    expect(together({}, 0.2, 3)).toBeCloseTo(Math.sqrt(0.02 ** 2 + (0.03 ** 2 - 0.02 ** 2) / 3), 9);
    expect(together({ bestTurnsSd: 0.08 }, 24, 4)).toBeCloseTo(one / 2, 9);
  });

  test("a sweep by ear says far more than the look of it", () => {
    const spreadOfBottom = (given: Parameters<typeof story>[0]): number => {
      const { belief } = weighingOf(story(given));
      return Math.sqrt(belief.overall.covariance[0]!);
    };
    const looked = spreadOfBottom({ tests: [tested("screw-sweep-air", "middle")] });
    const heard = spreadOfBottom({
      tests: [tested("screw-sweep-air", "middle", { numbers: { bestTurns: 1.5, bestTurnsSd: 0.08 } })],
    });
    expect(heard).toBeLessThan(0.7 * looked);
  });
});
