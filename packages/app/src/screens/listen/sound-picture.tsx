import type { Heard } from "@jetwright/core";
import { useEffect, useRef } from "preact/hooks";
import { useWords } from "../../words/use-words.ts";

interface SoundPictureProps {
  readonly heard: Heard;
  /** Called with the second that was tapped. */
  readonly onSecond: (second: number) => void;
}

const HEIGHT = 260;
const SECOND = 60;
/** Speeds of the scale, revolutions a minute. */
const MARKS = [1000, 2000, 4000, 8000, 16000];
const LOWEST = 700;
const OCTAVES = Math.log2(16000 / LOWEST);

const y = (rpm: number): number => HEIGHT * (1 - Math.log2(rpm / LOWEST) / OCTAVES);

/** How the sound stood out by pitch, with the speed that was read drawn over it: so that a person sees whether to believe it. */
export function SoundPicture({ heard, onSecond }: SoundPictureProps) {
  const words = useWords().listen;
  const canvas = useRef<HTMLCanvasElement>(null);
  const width = Math.ceil(heard.seconds * SECOND);
  useEffect(() => {
    if (canvas.current !== null) draw(canvas.current, heard, width);
  }, [heard]);
  const { track, events } = heard;
  const points: string[] = [];
  track.rpm.forEach((rpm, i) => {
    const before = track.rpm[i - 1] ?? 0;
    if (rpm > 0)
      points.push(`${before > 0 ? "L" : "M"}${(i * track.hop * SECOND).toFixed(1)} ${y(rpm).toFixed(1)}`);
  });
  const marked = events.filter((event) => event.kind !== "idle");
  return (
    <figure class="sound-picture">
      <div class="scroll">
        <div style={{ width: `${width}px` }} class="layers">
          <canvas ref={canvas} width={width} height={HEIGHT} />
          <svg width={width} height={HEIGHT + 28} role="img" aria-label={words.pictureOf}>
            {MARKS.map((rpm) => (
              <g key={rpm}>
                <line x1={0} x2={width} y1={y(rpm)} y2={y(rpm)} class="hair" />
                <text x={4} y={y(rpm) - 3}>
                  {rpm}
                </text>
              </g>
            ))}
            <path d={points.join("")} class="track under" />
            <path d={points.join("")} class="track" />
            {marked.map((event) => (
              <g key={`${event.kind} ${event.at}`}>
                <line x1={event.at * SECOND} x2={event.at * SECOND} y1={0} y2={HEIGHT} class="event" />
                <text x={event.at * SECOND + 3} y={HEIGHT + 20}>
                  {words.kinds[event.kind]}
                </text>
              </g>
            ))}
          </svg>
          {Array.from({ length: Math.ceil(heard.seconds) }, (_, second) => (
            <button
              key={second}
              type="button"
              class="second"
              style={{ left: `${second * SECOND}px`, width: `${SECOND}px` }}
              aria-label={words.hear(`${second}`)}
              onClick={() => onSecond(second)}
            />
          ))}
        </div>
      </div>
      <figcaption class="small quiet">{words.pictureHelp}</figcaption>
    </figure>
  );
}

function draw(canvas: HTMLCanvasElement, { picture, track }: Heard, width: number): void {
  const context = canvas.getContext("2d");
  if (context === null || picture === null || width === 0) return;
  const style = getComputedStyle(canvas);
  const ink = rgb(style.color);
  const image = context.createImageData(width, HEIGHT);
  // The lowest pitch of the scale is that of the lowest speed; two-strokes hold an octave more below it.
  const from = picture.rows - 1 - Math.round(picture.steps * 6.2) > picture.steps ? picture.steps : 0;
  for (let px = 0; px < width; px++) {
    const frame = Math.min(picture.frames - 1, Math.round(px / SECOND / track.hop));
    for (let py = 0; py < HEIGHT; py++) {
      const row = from + Math.round((1 - py / HEIGHT) * OCTAVES * picture.steps);
      const value = row < picture.rows ? picture.values[frame * picture.rows + row]! : 0;
      const at = 4 * (py * width + px);
      image.data[at] = ink[0];
      image.data[at + 1] = ink[1];
      image.data[at + 2] = ink[2];
      image.data[at + 3] = Math.min(170, Math.round(value * 0.7));
    }
  }
  context.putImageData(image, 0, 0);
}

function rgb(color: string): readonly [number, number, number] {
  const [r = 0, g = 0, b = 0] = (color.match(/[\d.]+/g) ?? []).map(Number);
  return [r, g, b];
}
