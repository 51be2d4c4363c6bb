import { useId } from "preact/hooks";
import type { Anatomy } from "../../engine/answers/anatomy.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import { diameterAt, type Pose } from "./pose.ts";

const WIDE = 150;
const HIGH = 120;
/** Half of the needle as drawn, px: its true width does not matter here, the gap does. */
const HALF = 14;
const PX_PER_MM_OF_GAP = 70;
const PX_PER_MM_DOWN = 5;
const JET_TOP = 34;
const WALL = 12;

/** The gap beside the needle in its jet, widened so that it can be seen. */
export function GapDrawing({ anatomy, pose }: { readonly anatomy: Anatomy; readonly pose: Pose }) {
  const words = useWords().pictures.section;
  const figure = useFigure();
  const hatch = useId();
  const middle = WIDE / 2;
  const drawn = (gap: number) => Math.min(44, Math.max(0, gap) * PX_PER_MM_OF_GAP);
  const wall = HALF + drawn(pose.gapMm);
  const heights = Array.from({ length: HIGH / 4 + 1 }, (_, i) => i * 4);
  // The needle keeps its width in the top of the jet; above and below it is thicker and thinner as it really is, widened alike.
  const half = (py: number) => {
    const below = pose.topGrooveMm + (py - JET_TOP) / PX_PER_MM_DOWN;
    return Math.max(2, HALF + ((diameterAt(anatomy.needle, below) - pose.needleMm) / 2) * PX_PER_MM_OF_GAP);
  };
  const side = (way: 1 | -1) => heights.map((py) => `${(middle + way * half(py)).toFixed(1)},${py}`);
  return (
    <svg class="picture gap" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
          <line class="hatch" x1="0" x2="0" y1="0" y2="6" />
        </pattern>
      </defs>
      <g class="cut" style={`fill:url(#${hatch})`}>
        <rect x={middle - wall - WALL} y={JET_TOP} width={WALL} height={HIGH - JET_TOP} />
        <rect x={middle + wall} y={JET_TOP} width={WALL} height={HIGH - JET_TOP} />
      </g>
      <polygon class="needle" points={[...side(-1), ...[...side(1)].reverse()].join(" ")} />
      <g class="measure">
        <line x1={middle + HALF} x2={middle + HALF} y1={14} y2={JET_TOP} />
        <line x1={middle + wall} x2={middle + wall} y1={14} y2={JET_TOP} />
        <text class="start halo" x={middle + HALF + 4} y={12}>
          {words.millimetres(figure(Math.max(0, pose.gapMm), 2))}
        </text>
      </g>
    </svg>
  );
}
