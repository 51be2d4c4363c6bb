import { type MixtureReading, openingName } from "@jetwright/core";
import { area, curveMonotoneX, line } from "d3-shape";
import { useState } from "preact/hooks";
import type { Stretch } from "../engine/answers/governs.ts";
import "../styles/pictures.css";
import { useWords } from "../words/use-words.ts";
import { loudest, mixtureScale } from "./mixture-scale.ts";
import { LIKELY, percentRich } from "./percent.ts";
import { rootScale, straightScale } from "./scale.ts";

interface MixturePictureProps {
  /** The mixture now, by opening, closed first. */
  readonly readings: readonly MixtureReading[];
  /** The same with the proposed setup. */
  readonly after?: readonly MixtureReading[] | null | undefined;
  /** The stretch each part leads; the one that matters is coloured. */
  readonly governs?: readonly Stretch[] | null | undefined;
}

const WIDE = 350;
const LEFT = 38;
const RIGHT = 8;
const TOP = 8;
const PLOT = 150;
const HIGH = 228;

/** Percent rich (up) or lean (down) against throttle opening, with its band of doubt; a finger on it reads it out. */
export function MixturePicture({ readings, after, governs }: MixturePictureProps) {
  const words = useWords().pictures;
  const [chosen, setChosen] = useState<number | null>(null);
  const { most, ticks } = mixtureScale(readings, after ?? []);
  // The square root gives the first quarter, where three parts take turns, as much room as the rest.
  const x = rootScale(1, [LEFT, WIDE - RIGHT]);
  const y = straightScale([-most, most], [TOP + PLOT, TOP]);
  const onLine = line<MixtureReading>(
    ({ opening }) => x(opening),
    ({ mean }) => y(percentRich(mean)),
  ).curve(curveMonotoneX);
  const band = area<MixtureReading>(
    ({ opening }) => x(opening),
    ({ mean, sd }) => y(percentRich(mean - LIKELY * sd)),
    ({ mean, sd }) => y(percentRich(mean + LIKELY * sd)),
  ).curve(curveMonotoneX);
  const calls = loudest(readings);
  const matters = calls && (governs?.find(({ to }) => calls.opening <= to)?.part ?? null);
  const way = (mean: number) =>
    percentRich(mean) >= 0.5 ? "rich" : percentRich(mean) <= -0.5 ? "lean" : "right";

  const says = (i: number): string => {
    const { opening, mean, sd } = readings[i]!;
    const then = after?.[i];
    const leads = governs?.find(({ from, to }) => opening >= from && opening <= to);
    return [
      words.mixture.read(
        words.spokenOpening(openingName(opening)),
        percentRich(mean),
        percentRich(mean - LIKELY * sd),
        percentRich(mean + LIKELY * sd),
      ),
      then && words.mixture.readAfter(percentRich(then.mean)),
      leads && words.mixture.governs(leads.part),
    ]
      .filter(Boolean)
      .join(" ");
  };

  const choose = (event: PointerEvent) => {
    if (event.type === "pointermove" && event.buttons === 0 && event.pointerType !== "mouse") return;
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const at = ((event.clientX - box.left) / box.width) * WIDE;
    const distances = readings.map(({ opening }) => Math.abs(x(opening) - at));
    setChosen(distances.indexOf(Math.min(...distances)));
  };
  const step = (event: KeyboardEvent) => {
    const last = readings.length - 1;
    const moves: Readonly<Record<string, number>> = {
      ArrowRight: Math.min(last, (chosen ?? -1) + 1),
      ArrowUp: Math.min(last, (chosen ?? -1) + 1),
      ArrowLeft: Math.max(0, (chosen ?? 1) - 1),
      ArrowDown: Math.max(0, (chosen ?? 1) - 1),
      Home: 0,
      End: last,
    };
    const next = moves[event.key];
    if (next === undefined) return;
    event.preventDefault();
    setChosen(next);
  };

  const read = chosen === null || readings[chosen] === undefined ? null : chosen;
  return (
    <figure class="mixture">
      <div
        class="touch"
        role="slider"
        tabIndex={0}
        aria-label={words.mixture.label}
        aria-orientation="horizontal"
        aria-valuemin={0}
        aria-valuemax={readings.length - 1}
        aria-valuenow={read ?? 0}
        aria-valuetext={read === null ? words.mixture.hint : says(read)}
        onPointerDown={choose}
        onPointerMove={choose}
        onKeyDown={step}
      >
        <svg class="picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
          {ticks.map((tick) => (
            <g key={tick}>
              <line
                class={tick === 0 ? "level" : "hair"}
                x1={LEFT}
                x2={WIDE - RIGHT}
                y1={y(tick)}
                y2={y(tick)}
              />
              <text class="end" x={LEFT - 6} y={y(tick) + 4}>
                {tick > 0 ? `+${tick}` : tick < 0 ? `−${-tick}` : "0"}
              </text>
            </g>
          ))}
          <path class="band" d={band([...readings]) ?? ""} />
          <line class="level" x1={LEFT} x2={WIDE - RIGHT} y1={y(0)} y2={y(0)} />
          <path class="ink" d={onLine([...readings]) ?? ""} />
          {after && <path class="proposed" d={onLine([...after]) ?? ""} />}
          <text class="rich halo" x={WIDE - RIGHT} y={TOP + 14}>
            {words.rich}
          </text>
          <text class="lean halo" x={WIDE - RIGHT} y={TOP + PLOT - 6}>
            {words.lean}
          </text>
          {read !== null && (
            <g>
              <line
                class="at"
                x1={x(readings[read]!.opening)}
                x2={x(readings[read]!.opening)}
                y1={TOP}
                y2={TOP + PLOT}
              />
              <circle
                class="dot"
                cx={x(readings[read]!.opening)}
                cy={y(percentRich(readings[read]!.mean))}
                r={5}
              />
            </g>
          )}
          {readings.map(({ opening }) => {
            const name = openingName(opening);
            return (
              <g key={name}>
                <line class="tick" x1={x(opening)} x2={x(opening)} y1={TOP + PLOT + 4} y2={TOP + PLOT + 9} />
                <text
                  class={opening === 0 ? "start" : opening === 1 ? "end" : "middle"}
                  x={opening === 0 ? LEFT - 6 : x(opening)}
                  y={TOP + PLOT + 23}
                >
                  {words.opening[name] ?? name}
                </text>
              </g>
            );
          })}
          {governs?.map(({ part, from, to }) => {
            const colour = part === matters ? way(calls!.mean) : "";
            return (
              <g key={part} class={`stretch ${colour}`}>
                <line x1={x(from) + 1} x2={x(to) - 1} y1={TOP + PLOT + 38} y2={TOP + PLOT + 38} />
                <text class="middle" x={(x(from) + x(to)) / 2} y={TOP + PLOT + 56}>
                  {words.parts[part]}
                </text>
              </g>
            );
          })}
        </svg>
      </div>
      <figcaption class="small">
        {read === null ? (
          <span class="quiet no-print">{words.mixture.hint}</span>
        ) : (
          <span class="spoken">{says(read)}</span>
        )}
      </figcaption>
      <div class="unseen">
        <table>
          <caption>{words.mixture.label}</caption>
          <thead>
            <tr>
              <th scope="col">{words.mixture.column.opening}</th>
              <th scope="col">{words.mixture.column.now}</th>
              <th scope="col">{words.mixture.column.between}</th>
              {after && <th scope="col">{words.mixture.column.after}</th>}
            </tr>
          </thead>
          <tbody>
            {readings.map(({ opening, mean, sd }, i) => (
              <tr key={opening}>
                <th scope="row">{words.opening[openingName(opening)]}</th>
                <td>{words.amount(percentRich(mean))}</td>
                <td>
                  {words.mixture.between(percentRich(mean - LIKELY * sd), percentRich(mean + LIKELY * sd))}
                </td>
                {after && <td>{after[i] && words.amount(percentRich(after[i].mean))}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </figure>
  );
}
