import type { HeardTake } from "../../engine/answers/listen/take-heard.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import "../../styles/heard.css";

const WIDTH = 350;
const HEIGHT = 220;
const EDGE = { left: 46, right: 6, top: 18, bottom: 40 };
/** A hang is where the speed stays more than this above idle, percent, and below this times idle. */
export const ABOVE_PERCENT = 15;
const BELOW = 2.2;

/** A kept take's speed against time, its idle, when the throttle was closed, and where it hung. */
export function HeardLine({ take }: { readonly take: HeardTake }) {
  const words = useWords().listen;
  const figure = useFigure();
  const { speed, events, figures } = take;
  if (speed === null || speed.rpm.length < 2) return <p>{words.noSpeed}</p>;
  const { everySeconds, rpm } = speed;
  const idle = figures.idleRpm ?? null;
  const heard = rpm.filter((value) => value > 0);
  const low = Math.log2(Math.min(...heard, 1000) * 0.9);
  const high = Math.log2(Math.max(...heard, 4000) * 1.05);
  const seconds = (rpm.length - 1) * everySeconds;
  const x = (t: number): number => EDGE.left + (t / seconds) * (WIDTH - EDGE.left - EDGE.right);
  const y = (value: number): number =>
    HEIGHT - EDGE.bottom - ((Math.log2(value) - low) / (high - low)) * (HEIGHT - EDGE.top - EDGE.bottom);
  const path = rpm
    .map((value, i) =>
      value === 0 ? "" : `${rpm[i - 1] ? "L" : "M"}${x(i * everySeconds).toFixed(1)} ${y(value).toFixed(1)}`,
    )
    .join("");
  const closed = events.filter(({ kind }) => kind === "chop").map(({ atSeconds }) => atSeconds);
  const opened = events.filter(({ kind }) => kind === "snap").map(({ atSeconds }) => atSeconds);
  const held = (i: number): boolean => {
    const t = i * everySeconds;
    const from = closed.findLast((at) => at <= t);
    if (from === undefined || idle === null || opened.some((at) => at > from && at <= t)) return false;
    return rpm[i]! > (1 + ABOVE_PERCENT / 100) * idle && rpm[i]! < BELOW * idle;
  };
  const marks = [1000, 2000, 4000, 8000, 16000].filter(
    (mark) => Math.log2(mark) > low && Math.log2(mark) < high,
  );
  const floor = HEIGHT - EDGE.bottom;
  return (
    <svg class="heard-line" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words.lineOf}>
      {rpm.map((_, i) =>
        held(i) ? (
          <rect
            key={i}
            x={x(i * everySeconds)}
            y={EDGE.top}
            width={x(everySeconds) - x(0) + 0.5}
            height={floor - EDGE.top}
            class="above"
          />
        ) : null,
      )}
      {marks.map((mark) => (
        <g key={mark}>
          <line x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(mark)} y2={y(mark)} class="hair" />
          <text x={EDGE.left - 6} y={y(mark) + 5} text-anchor="end">
            {mark}
          </text>
        </g>
      ))}
      {idle !== null && (
        <>
          <line x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(idle)} y2={y(idle)} class="idle" />
          <text x={WIDTH - EDGE.right} y={y(idle) + 16} text-anchor="end">
            {words.idleLine} {figure(idle, 0)}
          </text>
        </>
      )}
      {closed.map((at) => (
        <g key={at}>
          <line x1={x(at)} x2={x(at)} y1={EDGE.top} y2={floor} class="event" />
          <text x={Math.min(x(at), WIDTH - 50)} y={EDGE.top - 5}>
            {words.kinds.chop}
          </text>
        </g>
      ))}
      <path d={path} class="track" />
      <text x={EDGE.left} y={HEIGHT - 20}>
        0 s
      </text>
      <text x={WIDTH - EDGE.right} y={HEIGHT - 20} text-anchor="end">
        {figure(seconds, 0)} s
      </text>
    </svg>
  );
}
