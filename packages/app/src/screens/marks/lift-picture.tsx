import { scaleLinear } from "d3-scale";
import type { ThrottleMarks } from "../../engine/answers/throttle-marks.ts";
import { useFigure } from "../../preferences/use-figure.ts";

interface LiftPictureProps {
  readonly marks: ThrottleMarks;
  readonly label: string;
  readonly names: Readonly<Record<string, string>>;
}

const WIDTH = 350;
const FOOT = 190;
const HEAD = 22;

/** The bore seen from the filter side, to scale, with the lower edge of the slide at each mark. */
export function LiftPicture({ marks, label, names }: LiftPictureProps) {
  const figure = useFigure();
  const y = scaleLinear([0, marks.heightMm], [FOOT, HEAD]);
  const middle = 110;
  const half = ((FOOT - HEAD) / marks.heightMm) * (marks.widthMm / 2);
  return (
    <svg class="picture" viewBox={`0 0 ${WIDTH} ${FOOT + 16}`} role="img" aria-label={label}>
      {marks.shape === "D" ? (
        <path
          d={`M${middle - half} ${FOOT}V${HEAD + half}A${half} ${half} 0 0 1 ${middle + half} ${HEAD + half}V${FOOT}Z`}
          class="bore"
        />
      ) : (
        <ellipse cx={middle} cy={(HEAD + FOOT) / 2} rx={half} ry={(FOOT - HEAD) / 2} class="bore" />
      )}
      {marks.marks.map(({ opening, liftMm }) => (
        <g key={opening}>
          <line x1={middle - half - 14} x2={middle + half + 20} y1={y(liftMm)} y2={y(liftMm)} class="edge" />
          <text x={middle + half + 28} y={y(liftMm) + 5} font-size="15">
            {names[opening] ?? opening}, {figure(liftMm, 1)} mm
          </text>
        </g>
      ))}
    </svg>
  );
}
