import { outIs, type ScrewKind } from "@jetwright/core";
import "../styles/pictures.css";
import { useTurns } from "../preferences/use-figure.ts";
import { useWords } from "../words/use-words.ts";

interface ScrewPictureProps {
  readonly kind: ScrewKind;
  /** Turns out now; null when nobody counted. */
  readonly turns: number | null;
  readonly to?: number | null | undefined;
}

const WIDE = 190;
const HIGH = 190;

/** Where the screw of this body sits, and which way is richer on it. */
export function ScrewPicture({ kind, turns, to }: ScrewPictureProps) {
  const words = useWords().pictures.screw;
  const turnsText = useTurns();
  const outRicher = outIs(kind) === 1;
  const moves = turns !== null && to !== null && to !== undefined && to !== turns;
  const side = kind === "air" ? -1 : 1;
  const middle = WIDE / 2;
  const head = { x: middle, y: 132, r: 30 };
  const screwX = middle + side * 52;
  return (
    <figure class="explained">
      <svg class="picture screw-picture" viewBox={`0 0 ${WIDE} ${HIGH}`} aria-hidden="true">
        {/* The body from the side: filter left, engine right, the slide in the middle. */}
        <rect class="steel" x={20} y={34} width={WIDE - 40} height={34} />
        <rect class="steel" x={middle - 18} y={12} width={36} height={56} />
        <text class="start" x={20} y={28}>
          {words.filter}
        </text>
        <text class="end" x={WIDE - 20} y={28}>
          {words.engine}
        </text>
        <circle class="screw-here" cx={screwX} cy={60} r={7} />
        <line class="lead-line" x1={screwX} y1={67} x2={head.x + side * 18} y2={head.y - 26} />
        {/* Its head, large, and the two ways to turn it. */}
        <circle class="steel" cx={head.x} cy={head.y} r={head.r} />
        <line class="slot" x1={head.x - 19} x2={head.x + 19} y1={head.y + 8} y2={head.y - 8} />
        <path class="move" d={turnArrow(head, 1)} />
        <path class="move" d={turnArrow(head, -1)} />
        <text class="start" x={26} y={HIGH - 6}>
          {words.out}
        </text>
        <text class="end" x={WIDE - 26} y={HIGH - 6}>
          {words.in}
        </text>
      </svg>
      <figcaption class="stack">
        {turns !== null && <strong>{words.now(turnsText(turns), turns > 0 && turns <= 1)}</strong>}
        {moves && (
          <strong>
            {words.goesTo(
              turnsText(to),
              to > 0 && to <= 1,
              turnsText(Math.abs(to - turns)),
              to > turns,
              to > turns === outRicher,
            )}
          </strong>
        )}
        <span>
          <span class="rich">↑ {words.richer}</span> {outRicher ? words.turnOut : words.turnIn}
        </span>
        <span>
          <span class="lean">↓ {words.leaner}</span> {outRicher ? words.turnIn : words.turnOut}
        </span>
        <span class="small quiet">{words.rule[kind]}</span>
      </figcaption>
    </figure>
  );
}

/** An arc beside the head with its arrow: 1 clockwise on the right, -1 counter-clockwise on the left. */
function turnArrow(
  { x, y, r }: { readonly x: number; readonly y: number; readonly r: number },
  way: 1 | -1,
): string {
  const radius = r + 12;
  const dx = radius * 0.8;
  const dy = radius * 0.6;
  const endX = x + way * dx;
  const endY = y + dy;
  return `M${x + way * dx} ${y - dy}A${radius} ${radius} 0 0 ${way === 1 ? 1 : 0} ${endX} ${endY}m${way * 7} ${-5}l${-way * 7} 5l${-way * 1} ${-9}`;
}
