import "../styles/pictures.css";
import { useWords } from "../words/use-words.ts";

interface ClipPictureProps {
  readonly grooves: number;
  /** Groove of the clip now; null when nobody looked. */
  readonly clip: number | null;
  /** Groove it goes to. */
  readonly to?: number | null | undefined;
}

const WIDE = 190;
const MIDDLE = 104;
const HALF = 17;
const FIRST = 44;
const PITCH = 28;

/** The needle's top end, large: groove 1 is the top one at the blunt end, and a lower groove lifts the needle. */
export function ClipPicture({ grooves, clip, to }: ClipPictureProps) {
  const words = useWords().pictures.clip;
  const said = (groove: number) => words.in(Math.floor(groove), grooves, !Number.isInteger(groove));
  const y = (groove: number) => FIRST + (groove - 1) * PITCH;
  const high = y(grooves) + 44;
  const notch = 7;
  const edge = (side: 1 | -1) => {
    const outer = MIDDLE + side * HALF;
    const inner = MIDDLE + side * (HALF - notch);
    return Array.from({ length: grooves }, (_, i) => [
      [outer, y(i + 1) - 5],
      [inner, y(i + 1) - 3],
      [inner, y(i + 1) + 3],
      [outer, y(i + 1) + 5],
    ]).flat();
  };
  const outline = [
    [MIDDLE - HALF + 4, 14],
    ...[[MIDDLE + HALF - 4, 14]],
    [MIDDLE + HALF, 20],
    ...edge(1),
    [MIDDLE + HALF, high],
    [MIDDLE - HALF, high],
    ...[...edge(-1)].reverse(),
    [MIDDLE - HALF, 20],
  ];
  const bar = (groove: number, className: string) => {
    const at = y(Math.floor(groove));
    return (
      <g class={className}>
        <rect x={MIDDLE - HALF - 15} y={at - 4} width={15 + notch} height={8} />
        <rect x={MIDDLE + HALF - notch} y={at - 4} width={15 + notch} height={8} />
        {groove !== Math.floor(groove) && (
          <rect x={MIDDLE - HALF - 15} y={at + 7} width={2 * HALF + 30} height={4} />
        )}
      </g>
    );
  };
  const moves = to !== null && to !== undefined && clip !== null && to !== clip;
  return (
    <figure class="explained">
      <svg class="picture clip-picture" viewBox={`0 0 ${WIDE} ${high}`} aria-hidden="true">
        <polygon class="steel" points={outline.map(([px, py]) => `${px},${py}`).join(" ")} />
        {Array.from({ length: grooves }, (_, i) => (
          <text
            key={i}
            class={i + 1 === (to ?? clip) ? "end chosen" : "end"}
            x={MIDDLE - HALF - 24}
            y={y(i + 1) + 6}
          >
            {i + 1}
          </text>
        ))}
        <text class="start" x={MIDDLE + HALF + 8} y={22}>
          {words.blunt}
        </text>
        {clip !== null && bar(clip, moves ? "clip-was" : "clip-is")}
        {moves && bar(to, "clip-is")}
        {moves && (
          <path
            class="move"
            d={`M${MIDDLE + 52} ${y(clip)}V${y(to) + (to > clip ? -6 : 6)}m-5 ${to > clip ? -5 : 5}l5 ${to > clip ? 8 : -8}l5 ${to > clip ? -8 : 8}`}
          />
        )}
      </svg>
      <figcaption class="stack">
        {clip !== null && <strong>{words.now(said(clip))}</strong>}
        {moves && <strong>{words.goesTo(said(to), to > clip)}</strong>}
        <span>
          <span class="rich">↑ {words.richer}</span> {words.lower}
        </span>
        <span>
          <span class="lean">↓ {words.leaner}</span> {words.higher}
        </span>
        <span class="small quiet">{words.count}</span>
      </figcaption>
    </figure>
  );
}
