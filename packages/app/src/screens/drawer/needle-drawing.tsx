import { scaleLinear } from "d3-scale";
import type { NeedlePoint, NeedleShape } from "../../engine/answers/drawer/needle-shape.ts";
import { useWords } from "../../words/use-words.ts";

const WIDTH = 360;
const HEIGHT = 150;
const EDGE = { left: 44, right: 10, top: 14, bottom: 26 };

/** Diameter against distance below the top groove: the readings as dots, the shape found as a line. */
export function NeedleDrawing({
  points,
  shape,
}: {
  readonly points: readonly NeedlePoint[];
  readonly shape: NeedleShape;
}) {
  const words = useWords().drawer.needleScreen;
  const far = Math.max(...points.map(({ belowTopGrooveMm }) => belowTopGrooveMm), 1);
  const thin = Math.min(...points.map(({ diameterMm }) => diameterMm));
  const x = scaleLinear([0, far], [EDGE.left, WIDTH - EDGE.right]);
  const y = scaleLinear([thin - 0.05, shape.straightMm + 0.05], [HEIGHT - EDGE.bottom, EDGE.top]);
  const line = shape.line
    .map(
      ({ belowTopGrooveMm, diameterMm }) => `${x(belowTopGrooveMm).toFixed(1)},${y(diameterMm).toFixed(1)}`,
    )
    .join("L");
  return (
    <svg class="picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.title}>
      <line
        x1={EDGE.left}
        x2={WIDTH - EDGE.right}
        y1={HEIGHT - EDGE.bottom}
        y2={HEIGHT - EDGE.bottom}
        stroke="var(--line)"
      />
      {x.ticks(5).map((tick) => (
        <text key={tick} x={x(tick)} y={HEIGHT - 8} font-size="12" text-anchor="middle">
          {tick}
        </text>
      ))}
      {y.ticks(4).map((tick) => (
        <text key={tick} x={EDGE.left - 6} y={y(tick) + 4} font-size="12" text-anchor="end">
          {tick.toFixed(2)}
        </text>
      ))}
      <path d={`M${line}`} fill="none" stroke="var(--ink)" stroke-width="2.5" />
      {points.map(({ belowTopGrooveMm, diameterMm }) => (
        <circle
          key={`${belowTopGrooveMm} ${diameterMm}`}
          cx={x(belowTopGrooveMm)}
          cy={y(diameterMm)}
          r="4"
          fill="var(--ground)"
          stroke="var(--ink)"
          stroke-width="2"
        />
      ))}
    </svg>
  );
}
