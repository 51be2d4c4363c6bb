import { scaleLinear, scalePoint } from "d3-scale";
import { line } from "d3-shape";
import type { TrendRide } from "../engine/answers/trend.ts";
import "../styles/pictures.css";
import { useWords } from "../words/use-words.ts";
import { mixtureScale } from "./mixture-scale.ts";
import { LIKELY, percentRich } from "./percent.ts";

const WIDE = 350;
const LEFT = 46;
const RIGHT = 14;
const ROW = 84;
const GAP = 14;
const ROWS = ["top", "middle", "bottom"] as const;

/** A bike over its rides: how rich (up) or lean (down) it ran at full, half and an eighth of the throttle. */
export function TrendPicture({ rides }: { readonly rides: readonly TrendRide[] }) {
  const all = useWords().pictures;
  const words = all.trend;
  const high = ROWS.length * (ROW + GAP) + 16;
  const x = scalePoint<number>(
    rides.map((_, i) => i),
    [LEFT, WIDE - RIGHT],
  ).padding(0.4);
  const { most } = mixtureScale(rides.flatMap(({ top, middle, bottom }) => [top, middle, bottom]));
  return (
    <figure class="trend">
      <svg class="picture" viewBox={`0 0 ${WIDE} ${high}`} aria-hidden="true">
        {ROWS.map((row, r) => {
          const from = r * (ROW + GAP);
          const y = scaleLinear([-most, most], [from + ROW, from]).clamp(true);
          const path = line<TrendRide>(
            (_, i) => x(i)!,
            (ride) => y(percentRich(ride[row].mean)),
          );
          return (
            <g key={row}>
              <rect class="frame" x={LEFT} y={from} width={WIDE - RIGHT - LEFT} height={ROW} />
              <line class="level" x1={LEFT} x2={WIDE - RIGHT} y1={y(0)} y2={y(0)} />
              <text class="end name" x={LEFT - 8} y={y(0) + 5}>
                {all.opening[words[row]] ?? words[row]}
              </text>
              <text class="rich start halo" x={LEFT + 4} y={from + 14}>
                {all.rich}
              </text>
              <text class="lean start halo" x={LEFT + 4} y={from + ROW - 5}>
                {all.lean}
              </text>
              {rides.map((ride, i) => (
                <g key={ride.record}>
                  {ride.changed && (
                    <line class="changed" x1={x(i)! - 12} x2={x(i)! - 12} y1={from} y2={from + ROW} />
                  )}
                  <line
                    class="doubt"
                    x1={x(i)}
                    x2={x(i)}
                    y1={y(percentRich(ride[row].mean - LIKELY * ride[row].sd))}
                    y2={y(percentRich(ride[row].mean + LIKELY * ride[row].sd))}
                  />
                </g>
              ))}
              <path class="ink" d={path([...rides]) ?? ""} />
              {rides.map((ride, i) => (
                <circle key={ride.record} class="dot" cx={x(i)} cy={y(percentRich(ride[row].mean))} r={3.5} />
              ))}
            </g>
          );
        })}
        {rides.map((ride, i) => (
          <text key={ride.record} class="middle" x={x(i)} y={high - 10}>
            {i + 1}
          </text>
        ))}
      </svg>
      <figcaption class="small quiet">{words.note}</figcaption>
      <div class="unseen">
        <table>
          <caption>{words.label}</caption>
          <thead>
            <tr>
              <th scope="col">{words.column.ride}</th>
              {ROWS.map((row) => (
                <th key={row} scope="col">
                  {words.column[row]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rides.map((ride, i) => (
              <tr key={ride.record}>
                <th scope="row">
                  {words.ride(i + 1)}
                  {ride.changed && `, ${words.changed}`}
                </th>
                {ROWS.map((row) => (
                  <td key={row}>{all.amount(percentRich(ride[row].mean))}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </figure>
  );
}
