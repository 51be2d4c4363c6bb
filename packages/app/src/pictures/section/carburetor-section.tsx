import { openingName, SPOKEN_OPENINGS } from "@jetwright/core";
import { useId, useState } from "preact/hooks";
import type { Anatomy } from "../../engine/answers/anatomy.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import "../../styles/pictures.css";
import "../../styles/section.css";
import { useWords } from "../../words/use-words.ts";
import { percentRich } from "../percent.ts";
import { GapDrawing } from "./gap-drawing.tsx";
import { poseAt } from "./pose.ts";
import { SectionDrawing } from "./section-drawing.tsx";

interface CarburetorSectionProps {
  readonly anatomy: Anatomy;
  /** Where the throttle stands at first, 0 to 1. */
  readonly opening?: number;
}

/** The carburetor in section at a chosen opening: the needle rises with the slide, and the passage that sets the fuel is named. */
export function CarburetorSection({ anatomy, opening = 0.25 }: CarburetorSectionProps) {
  const all = useWords().pictures;
  const words = all.section;
  const id = useId();
  const figure = useFigure();
  const [open, setOpen] = useState(opening);
  const pose = poseAt(anatomy, open);
  const nearest = anatomy.at.reduce((a, b) =>
    Math.abs(b.opening - open) < Math.abs(a.opening - open) ? b : a,
  );
  const name = openingName(nearest.opening);
  const where = all.spokenOpening(name);
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  const step = (error: number) => words.richer(figure(Math.abs(percentRich(error)), 1));
  return (
    <figure class="section-figure stack">
      <SectionDrawing anatomy={anatomy} pose={pose} />
      <div class="throttle no-print">
        <label for={id}>{words.open}</label>
        <input
          id={id}
          type="range"
          min={0}
          max={100}
          step={1}
          value={Math.round(open * 100)}
          aria-valuetext={`${where}. ${words.leads(nearest.leads)}`}
          onInput={(event) => setOpen(Number(event.currentTarget.value) / 100)}
        />
        <div class="marks">
          {SPOKEN_OPENINGS.map((mark) => (
            <button
              key={mark}
              type="button"
              class="mark"
              aria-pressed={Math.abs(mark - open) < 0.005}
              onClick={() => setOpen(mark)}
            >
              <span class="unseen">{all.spokenOpening(openingName(mark))}</span>
              <span aria-hidden="true">{all.opening[openingName(mark)]}</span>
            </button>
          ))}
        </div>
      </div>
      <div class="gap-row">
        <GapDrawing anatomy={anatomy} pose={pose} />
        <figcaption class="stack">
          <strong>
            {where}: {words.leads(pose.leads)}
          </strong>
          <span class="small quiet">
            {words.gap(figure(Math.max(0, pose.gapMm), 2))} {words.widened}
          </span>
        </figcaption>
      </div>
      <details>
        <summary>{words.sharesTitle}</summary>
        <table>
          <tbody>
            <tr>
              <th scope="row">{words.pilotShare}</th>
              <td class="number">{percent(nearest.shares.pilot)}</td>
            </tr>
            <tr>
              <th scope="row">{words.needleShare}</th>
              <td class="number">{percent(nearest.shares.needle)}</td>
            </tr>
            <tr>
              <th scope="row">{words.mainShare}</th>
              <td class="number">{percent(nearest.shares.main)}</td>
            </tr>
            {nearest.steps.clip > 0 && (
              <tr>
                <th scope="row">{words.clipStep}</th>
                <td class="number rich">{step(nearest.steps.clip)}</td>
              </tr>
            )}
            <tr>
              <th scope="row">{words.slideStep}</th>
              <td class="number rich">{step(nearest.steps.slide)}</td>
            </tr>
            <tr>
              <th scope="row">{words.screwStep(anatomy.screw.kind)}</th>
              <td class="number rich">{step(nearest.steps.screw)}</td>
            </tr>
          </tbody>
        </table>
      </details>
      {anatomy.usual.length > 0 && (
        <p class="small quiet">
          {words.usual(anatomy.usual.map((part) => words.usualNames[part] ?? part).join(", "))}
        </p>
      )}
    </figure>
  );
}
