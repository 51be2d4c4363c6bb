import { useId } from "preact/hooks";
import type { Anatomy } from "../../engine/answers/anatomy.ts";
import { useFigure, useTurns } from "../../preferences/use-figure.ts";
import { useWords } from "../../words/use-words.ts";
import { diameterAt, type Pose } from "./pose.ts";

const WIDE = 350;
const MOST_HIGH = 380;

interface SectionDrawingProps {
  readonly anatomy: Anatomy;
  readonly pose: Pose;
}

/** The carburetor cut along the air: filter left, engine right. One scale for all that is drawn. */
export function SectionDrawing({ anatomy, pose }: SectionDrawingProps) {
  const words = useWords().pictures.section;
  const figure = useFigure();
  const turns = useTurns();
  const hatch = useId();
  const { widthMm: w, heightMm: h, seatToJetMm, cutawayMm, needle, clip, groovePitchMm, screw } = anatomy;
  const tip = needle[needle.length - 1]!.belowTopGrooveMm;
  const idle = anatomy.at[0]?.liftMm ?? 0;
  // Sizes nobody needs to know are set by those known.
  const slideHalf = 0.56 * w;
  const slideHigh = Math.max(1.05 * h, seatToJetMm + 5);
  const chamberTop = h + slideHigh + 3;
  const bodyHalf = 0.95 * w + 6;
  const floor = Math.min(9, Math.max(4, anatomy.fuelLiftMm - 2));
  const tube = Math.max(tip - seatToJetMm - (clip - 1) * groovePitchMm - idle + 3, floor + 14);
  const bowlDeep = tube + 9;
  const bowlHalf = 0.8 * w;
  const tall = chamberTop + 5 + bowlDeep + 2;
  const scale = Math.min(MOST_HIGH / tall, WIDE / (2 * (bodyHalf + 18)));
  const high = tall * scale;
  const x = (mm: number) => WIDE / 2 + mm * scale;
  const y = (mm: number) => (chamberTop + 5 - mm) * scale;
  const points = (...list: readonly (readonly [number, number])[]) =>
    list.map(([px, py]) => `${x(px).toFixed(1)},${y(py).toFixed(1)}`).join(" ");
  const box = (left: number, right: number, top: number, bottom: number) =>
    points([left, top], [right, top], [right, bottom], [left, bottom]);

  const { liftMm, seatMm, topGrooveMm, leads } = pose;
  const jetHalf = anatomy.needleJetMm / 2;
  const tubeHalf = jetHalf + 2.2;
  const well = jetHalf + 0.8;
  const jetLong = Math.min(14, tube - 6);
  const pilotX = slideHalf + 3;
  const pilotLow = Math.max(floor + 12, 0.55 * tube);
  const needleOutline = [-2.5, ...needle.map(({ belowTopGrooveMm }) => belowTopGrooveMm)];
  const needleSide = (side: 1 | -1) =>
    needleOutline.map((below) => [(side * diameterAt(needle, below)) / 2, topGrooveMm - below] as const);
  const grooves = Array.from({ length: anatomy.grooves }, (_, i) => topGrooveMm - i * groovePitchMm);
  const usual = (part: Anatomy["usual"][number]) => anatomy.usual.includes(part);
  const screwSide = screw.kind === "air" ? -1 : 1;
  const screwEnd = screwSide * (bodyHalf + 9);
  const screwTip = screwSide * (bodyHalf - 12 + 0.6 * screw.turns);
  const screwY = -floor / 2;

  const spoken = (text: string, guess: boolean) => (guess ? `${text} ${words.usualMark}` : text);
  const label = (
    lx: number,
    ly: number,
    anchor: "start" | "end",
    text: string,
    to: readonly [number, number],
    loud: boolean,
    guess: boolean,
  ) => (
    <g class={loud ? "label loud-label" : "label"}>
      <line
        x1={lx + (anchor === "start" ? 1 : -1) * (4 + (loud ? 7.4 : 5.6) * spoken(text, guess).length)}
        y1={ly - 4}
        x2={x(to[0])}
        y2={y(to[1])}
      />
      <text class={`${anchor} halo`} x={lx} y={ly}>
        {spoken(text, guess)}
      </text>
    </g>
  );
  const below = y(-floor);
  const rows = (i: number) => below + 22 + i * Math.max(30, (high - below - 40) / 3);

  return (
    <svg class="picture section" viewBox={`0 0 ${WIDE} ${high.toFixed(0)}`} aria-hidden="true">
      <defs>
        <pattern id={hatch} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="0" x2="0" y1="0" y2="6" />
        </pattern>
      </defs>

      {/* Body: floor, roof with the slide's chamber, cap. */}
      <g class="cut" style={`fill:url(#${hatch})`}>
        <path
          d={`M${x(-bodyHalf)} ${y(-4)} Q${x(-bodyHalf + 2)} ${y(0)} ${x(-bodyHalf + 9)} ${y(0)} L${x(-tubeHalf)} ${y(0)} V${y(-floor)} H${x(-bodyHalf)} Z`}
        />
        <polygon points={box(tubeHalf, pilotX - 1, 0, -floor)} />
        <polygon points={box(pilotX + 1, bodyHalf, 0, -floor)} />
        <path
          d={`M${x(-bodyHalf)} ${y(h + 4)} Q${x(-bodyHalf + 2)} ${y(h)} ${x(-bodyHalf + 9)} ${y(h)} H${x(-slideHalf)} V${y(chamberTop)} H${x(-slideHalf - 3)} V${y(h + 5)} H${x(-bodyHalf)} Z`}
        />
        <path
          d={`M${x(bodyHalf)} ${y(h)} H${x(slideHalf)} V${y(chamberTop)} H${x(slideHalf + 3)} V${y(h + 5)} H${x(bodyHalf)} Z`}
        />
        <polygon points={box(-slideHalf - 4, slideHalf + 4, chamberTop + 4, chamberTop)} />
        <polygon
          points={points(
            [-bowlHalf, -floor],
            [-bowlHalf, -bowlDeep],
            [bowlHalf, -bowlDeep],
            [bowlHalf, -floor],
            [bowlHalf - 2, -floor],
            [bowlHalf - 2, -bowlDeep + 2],
            [-bowlHalf + 2, -bowlDeep + 2],
            [-bowlHalf + 2, -floor],
          )}
        />
      </g>

      {/* Fuel in the bowl. */}
      <g class="fuel">
        {[0, 1, 2].map((i) => (
          <line
            key={i}
            x1={x(-bowlHalf + 4 + 3 * i)}
            x2={x(bowlHalf - 4 - 3 * i)}
            y1={y(-Math.max(anatomy.fuelLiftMm, floor + 2) - 2.2 * i)}
            y2={y(-Math.max(anatomy.fuelLiftMm, floor + 2) - 2.2 * i)}
          />
        ))}
      </g>

      {/* Passages that carry the fuel, the one that sets it in full ink. */}
      <g class="brass">
        <polygon points={box(-tubeHalf, -jetHalf, 1.5, -jetLong)} />
        <polygon points={box(jetHalf, tubeHalf, 1.5, -jetLong)} />
        <polygon points={box(-tubeHalf, -well, -jetLong, -tube)} />
        <polygon points={box(well, tubeHalf, -jetLong, -tube)} />
      </g>
      <g class={leads === "main" ? "brass leads" : "brass"}>
        <polygon points={box(-4, -anatomy.mainBoreMm / 2, -tube, -tube - 5.5)} />
        <polygon points={box(anatomy.mainBoreMm / 2, 4, -tube, -tube - 5.5)} />
      </g>
      <g class="brass">
        <polygon points={box(pilotX - 2.2, pilotX - 1, -floor, -pilotLow + 8)} />
        <polygon points={box(pilotX + 1, pilotX + 2.2, -floor, -pilotLow + 8)} />
      </g>
      <g class={leads === "pilot" ? "brass leads" : "brass"}>
        <polygon points={box(pilotX - 2.6, pilotX - anatomy.pilotBoreMm / 2, -pilotLow + 8, -pilotLow)} />
        <polygon points={box(pilotX + anatomy.pilotBoreMm / 2, pilotX + 2.6, -pilotLow + 8, -pilotLow)} />
      </g>

      {/* The small screw and its passage. */}
      {screw.kind === "air" && (
        <line class="behind" x1={x(screwTip + 3)} x2={x(pilotX - 1)} y1={y(screwY)} y2={y(screwY)} />
      )}
      {screw.kind === "fuel" && (
        <line class="behind" x1={x(screwTip - 3)} x2={x(pilotX + 1)} y1={y(screwY)} y2={y(screwY)} />
      )}
      <polygon
        class="brass"
        points={points(
          [screwEnd, screwY + 1.6],
          [screwTip + screwSide * 4, screwY + 1.6],
          [screwTip, screwY],
          [screwTip + screwSide * 4, screwY - 1.6],
          [screwEnd, screwY - 1.6],
        )}
      />
      <line class="edge" x1={x(screwEnd)} x2={x(screwEnd)} y1={y(screwY + 3)} y2={y(screwY - 3)} />

      {/* Slide, spring, needle and clip: what moves. */}
      <polyline
        class="spring"
        points={spring(slideHalf * 0.55, liftMm + slideHigh - 2, chamberTop)
          .map(([px, py]) => `${x(px)},${y(py)}`)
          .join(" ")}
      />
      <polygon
        class="slide"
        points={points(
          [-slideHalf + 0.4, liftMm + slideHigh],
          [-slideHalf + 0.4, liftMm + cutawayMm],
          [slideHalf * 0.35, liftMm],
          [slideHalf - 0.4, liftMm],
          [slideHalf - 0.4, liftMm + slideHigh],
        )}
      />
      {leads === "slide" && (
        <polyline
          class="edge lead-edge"
          points={points([-slideHalf + 0.4, liftMm + cutawayMm], [slideHalf * 0.35, liftMm])}
        />
      )}
      <polygon
        class={leads === "needle" ? "needle leads" : "needle"}
        points={points(...needleSide(-1), ...[...needleSide(1)].reverse())}
      />
      {grooves.map((at) => (
        <line
          key={at}
          class="groove"
          x1={x(-needle[0]!.diameterMm / 2)}
          x2={x(needle[0]!.diameterMm / 2)}
          y1={y(at)}
          y2={y(at)}
        />
      ))}
      <line class="clip" x1={x(-4)} x2={x(4)} y1={y(seatMm)} y2={y(seatMm)} />

      {/* Air. */}
      <g class="air">
        <path d={arrow(6, 66, y(h * 0.62))} />
        <text class="start" x={6} y={y(h * 0.62) - 8}>
          {words.filter}
        </text>
        <path d={arrow(WIDE - 66, WIDE - 6, y(h * 0.62))} />
        <text class="end" x={WIDE - 6} y={y(h * 0.62) - 8}>
          {words.engine}
        </text>
      </g>

      {label(4, 16, "start", words.clip(clip), [-4, seatMm], false, usual("clip"))}
      {label(
        WIDE - 4,
        16,
        "end",
        words.needle(anatomy.numbers.needle),
        [needle[0]!.diameterMm / 2, Math.min(seatMm - 8, chamberTop - 6)],
        leads === "needle",
        usual("needle"),
      )}
      {label(
        4,
        y(h + 5) - 22,
        "start",
        words.cutaway(figure(cutawayMm, 1)),
        [-slideHalf + 1.5, liftMm + cutawayMm * 0.9],
        leads === "slide",
        usual("cutaway"),
      )}
      {label(
        4,
        rows(1),
        "start",
        words.needleJet(figure(anatomy.needleJetMm, 2)),
        [-tubeHalf, -jetLong * 0.7],
        leads === "needle",
        usual("needleJet"),
      )}
      {label(
        4,
        rows(2),
        "start",
        words.main(anatomy.numbers.main),
        [-3, -tube - 3],
        leads === "main",
        usual("main"),
      )}
      {label(
        WIDE - 4,
        rows(1),
        "end",
        words.pilot(anatomy.numbers.pilot),
        [pilotX + 2, -pilotLow + 4],
        leads === "pilot",
        usual("pilot"),
      )}
      {label(
        screwSide < 0 ? 4 : WIDE - 4,
        rows(0),
        screwSide < 0 ? "start" : "end",
        words.screw(screw.kind, turns(screw.turns)),
        [screwEnd - screwSide * 2, screwY - 1.8],
        false,
        usual("screw"),
      )}
    </svg>
  );
}

const arrow = (from: number, to: number, y: number): string =>
  `M${from} ${y}H${to}M${to - 8} ${y - 5}L${to} ${y}L${to - 8} ${y + 5}`;

/** A spring seen from the side, between two heights. */
function spring(half: number, low: number, top: number): readonly (readonly [number, number])[] {
  const turns = 7;
  return Array.from({ length: 2 * turns + 1 }, (_, i) => [
    i % 2 === 0 ? -half : half,
    low + ((top - low) * i) / (2 * turns),
  ]);
}
