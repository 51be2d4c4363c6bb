import { scaleLinear } from "d3-scale";
import type { NeedlePoint, NeedleShape } from "../../engine/answers/drawer/needle-shape.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";

const WIDTH = 360;
const HEIGHT = 190;
const EDGE = { left: 44, right: 12, top: 18, bottom: 44 };

/** Diameter against distance below the top groove: the readings as dots, the shape found as a line. */
export function NeedleDrawing({
  points,
  shape,
}: {
  readonly points: readonly NeedlePoint[];
  /** Null while no shape is found. */
  readonly shape: NeedleShape | null;
}) {
  const words = useWords().drawer.needleScreen;
  const figure = useFigure();
  const below = points.map(({ belowTopGrooveMm }) => belowTopGrooveMm);
  const thick = [...points, ...(shape?.line ?? [])].map(({ diameterMm }) => diameterMm);
  const room = Math.max(0.05, 0.08 * (Math.max(...thick) - Math.min(...thick)));
  const x = scaleLinear([0, Math.max(...below, 1)], [EDGE.left, WIDTH - EDGE.right]);
  const y = scaleLinear(
    [Math.min(...thick) - room, Math.max(...thick) + room],
    [HEIGHT - EDGE.bottom, EDGE.top],
  );
  const path = (line: readonly NeedlePoint[]) =>
    `M${line.map((at) => `${x(at.belowTopGrooveMm).toFixed(1)},${y(at.diameterMm).toFixed(1)}`).join("L")}`;
  const doubted = (point: NeedlePoint) =>
    shape?.doubtful.some(
      ({ belowTopGrooveMm, diameterMm }) =>
        belowTopGrooveMm === point.belowTopGrooveMm && diameterMm === point.diameterMm,
    ) ?? false;
  const first = Math.min(...below);
  const told =
    shape === null ? words.drawingOnly : words.drawing(figure(shape.straightMm, 3), shape.tapers.length);
  return (
    <svg class="picture needle-picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={told}>
      <line
        class="axis"
        x1={EDGE.left}
        x2={WIDTH - EDGE.right}
        y1={HEIGHT - EDGE.bottom}
        y2={HEIGHT - EDGE.bottom}
      />
      {x.ticks(6).map((tick) => (
        <text key={`x${tick}`} x={x(tick)} y={HEIGHT - EDGE.bottom + 16} font-size="12" text-anchor="middle">
          {tick}
        </text>
      ))}
      <text x={(EDGE.left + WIDTH - EDGE.right) / 2} y={HEIGHT - 8} font-size="12" text-anchor="middle">
        {words.acrossAxis}
      </text>
      {y.ticks(4).map((tick) => (
        <text key={`y${tick}`} x={EDGE.left - 6} y={y(tick) + 4} font-size="12" text-anchor="end">
          {figure(tick, 2)}
        </text>
      ))}
      {shape !== null && (
        <>
          <path
            class="shape carried-on"
            d={path([
              { belowTopGrooveMm: 0, diameterMm: shape.straightMm },
              { belowTopGrooveMm: first, diameterMm: shape.straightMm },
            ])}
          />
          <path
            class="shape"
            d={path([
              { belowTopGrooveMm: first, diameterMm: shape.straightMm },
              ...shape.line.filter(({ belowTopGrooveMm }) => belowTopGrooveMm > first),
            ])}
          />
        </>
      )}
      {points.map((point, i) => {
        const [cx, cy] = [x(point.belowTopGrooveMm), y(point.diameterMm)];
        if (!doubted(point)) return <circle key={i} class="reading" cx={cx} cy={cy} r="4" />;
        return (
          <g key={i}>
            <path class="doubtful" d={`M${cx - 5},${cy - 5}l10,10m0,-10l-10,10`} />
            <text
              class="doubted"
              x={cx}
              y={cy < EDGE.top + 14 ? cy + 20 : cy - 9}
              font-size="12"
              text-anchor="middle"
            >
              {words.doubted}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
