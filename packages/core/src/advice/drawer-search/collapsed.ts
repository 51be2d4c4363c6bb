import { exp, log } from "../../numerics/elementary.ts";
import { CIRCUITS } from "../../units/circuit.ts";
import { MINUTES, STEEPNESS } from "../loss.ts";
import { CIRCUIT_COUNT, type LossTable, quadraticAt, TERMS } from "./loss-table.ts";

/** The circuits that needle and main jet move; a partner moves the rest, and by the fuel lift "main" too. */
export const OWN = [CIRCUITS.indexOf("needle"), CIRCUITS.indexOf("main")] as const;
export const PARTNER = (["pilot", "screw", "slide", "main", "air"] as const).map((circuit) =>
  CIRCUITS.indexOf(circuit),
);

/**
 * The whole belief drawn together into one exponential for each opening, a floor under the expected loss.
 *
 * At one opening the lean half of the loss is E(d) = Σ_h exp q_h(d), one term for each part of the belief, each q_h a
 * quadratic in the shift d. Take any centre d₀ and t_h = exp q_h(d₀) / E(d₀). Then E(d) = E(d₀) Σ t_h exp(q_h(d) −
 * q_h(d₀)), and since the t_h sum to 1 and exp is convex (Jensen),
 *
 *     E(d) ≥ E(d₀) exp Σ t_h (q_h(d) − q_h(d₀)) = E(d₀) exp(g·δ + δ′H δ / 2),   δ = d − d₀,
 *
 * with g and H the weighed gradients and second derivatives. It holds for every d and every belief, and is exact at
 * d₀ and where all parts answer alike: were every engine to answer as the model says, q_h would differ by constants only
 * and nothing be lost at all. The other half of the loss is linear and needs no floor.
 */
export interface Collapsed {
  readonly centre: Float64Array;
  /** log of minutes times E(d₀), by opening. */
  readonly height: Float64Array;
  /** g and H by opening: 6 and 36 numbers. */
  readonly gradient: Float64Array;
  readonly curvature: Float64Array;
  /** Minutes for each unit of a circuit's shift, by opening: the linear half. */
  readonly slope: Float64Array;
  /** The linear half at the centre, minutes. */
  readonly base: number;
}

export function collapseAt(table: LossTable, centre: Float64Array): Collapsed {
  const { parts, exponents, level } = table;
  const openings = level.length;
  const square = CIRCUIT_COUNT * CIRCUIT_COUNT;
  const height = new Float64Array(openings);
  const gradient = new Float64Array(openings * CIRCUIT_COUNT);
  const curvature = new Float64Array(openings * square);
  const slope = new Float64Array(openings * CIRCUIT_COUNT);
  let base = 0;
  for (let u = 0; u < openings; u++) {
    const d = centre.subarray(u * CIRCUIT_COUNT, (u + 1) * CIRCUIT_COUNT);
    const values = Float64Array.from({ length: parts }, (_, h) =>
      quadraticAt(exponents, (u * parts + h) * TERMS, d[0]!, d[1]!, d[2]!, d[3]!, d[4]!, d[5]!),
    );
    const most = values.reduce((a, b) => Math.max(a, b), -Infinity);
    const sum = values.reduce((all, value) => all + exp(value - most), 0);
    height[u] = log(MINUTES[u]!) + most + log(sum);
    for (let h = 0; h < parts; h++) {
      const share = exp(values[h]! - most) / sum;
      const at = (u * parts + h) * TERMS;
      let t = 1 + CIRCUIT_COUNT;
      for (let c = 0; c < CIRCUIT_COUNT; c++) {
        const own = u * CIRCUIT_COUNT + c;
        gradient[own] = gradient[own]! + share * exponents[at + 1 + c]!;
        for (let e = c; e < CIRCUIT_COUNT; e++, t++) {
          const second = share * exponents[at + t]! * (e === c ? 2 : 1);
          const there = u * square + c * CIRCUIT_COUNT + e;
          curvature[there] = curvature[there]! + second;
          if (e !== c) {
            const mirror = u * square + e * CIRCUIT_COUNT + c;
            curvature[mirror] = curvature[mirror]! + second;
          }
        }
      }
    }
    let mean = level[u]!;
    for (let c = 0; c < CIRCUIT_COUNT; c++) {
      const own = u * CIRCUIT_COUNT + c;
      // The terms give the gradient at no shift; H carries it to the centre.
      for (let e = 0; e < CIRCUIT_COUNT; e++) {
        gradient[own] = gradient[own]! + curvature[u * square + c * CIRCUIT_COUNT + e]! * d[e]!;
      }
      slope[own] = MINUTES[u]! * STEEPNESS[u]! * table.slope[c]!;
      mean += table.slope[c]! * d[c]!;
    }
    base += MINUTES[u]! * (STEEPNESS[u]! * mean - 1);
  }
  return { centre, height, gradient, curvature, slope, base };
}
