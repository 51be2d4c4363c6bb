import type { SweepMark, SweepReading } from "@jetwright/core";
import { useFigure, useTurns } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";

interface SweepPictureProps {
  readonly marks: readonly SweepMark[];
  readonly reading: SweepReading | null;
}

const WIDTH = 340;
const HEIGHT = 170;
const EDGE = { left: 48, right: 14, top: 14, bottom: 26 };

/** The marks of a sweep, with the best place and where the idle has fallen by fifty. */
export function SweepPicture({ marks, reading }: SweepPictureProps) {
  const words = useWords().sweep;
  const figure = useFigure();
  const turnsOf = useTurns();
  const turns = marks.map((mark) => mark.turns);
  const speeds = marks.map((mark) => mark.rpm);
  const [first, last] = [Math.min(...turns) - 0.125, Math.max(...turns) + 0.125];
  const [low, high] = [Math.min(...speeds) - 20, Math.max(...speeds) + 20];
  const x = (value: number): number =>
    EDGE.left + ((value - first) / (last - first)) * (WIDTH - EDGE.left - EDGE.right);
  const y = (rpm: number): number =>
    HEIGHT - EDGE.bottom - ((rpm - low) / (high - low)) * (HEIGHT - EDGE.top - EDGE.bottom);
  const peak = reading?.kind === "peak" ? reading : null;
  const whole = [...new Set(turns)].sort((a, b) => a - b).filter((value) => value % 0.5 === 0);
  return (
    <svg
      class="picture sweep-picture"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={words.picture}
    >
      <line x1={EDGE.left} x2={WIDTH - EDGE.right} y1={y(low)} y2={y(low)} class="axis" />
      {whole.map((value) => (
        <text key={value} x={x(value)} y={HEIGHT - 8} text-anchor="middle">
          {turnsOf(value)}
        </text>
      ))}
      {[Math.max(...speeds), Math.min(...speeds)].map((rpm) => (
        <text key={rpm} x={EDGE.left - 8} y={y(rpm) + 5} text-anchor="end">
          {figure(Math.round(rpm / 10) * 10, 0)}
        </text>
      ))}
      {peak !== null && (
        <>
          <line x1={x(peak.turns)} x2={x(peak.turns)} y1={EDGE.top} y2={y(low)} class="best" />
          {[peak.inner, peak.outer].map(
            (edge) =>
              edge !== null && (
                <line
                  key={edge}
                  x1={x(edge)}
                  x2={x(edge)}
                  y1={y(peak.rpm - 50) - 10}
                  y2={y(low)}
                  class="edge"
                />
              ),
          )}
        </>
      )}
      {marks.map((mark, i) => (
        <circle key={`${mark.turns} ${i}`} cx={x(mark.turns)} cy={y(mark.rpm)} r={5} />
      ))}
    </svg>
  );
}
