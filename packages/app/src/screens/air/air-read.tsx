import type { AirPreview } from "../../engine/answers/air/air-preview.ts";
import { useWords } from "../../words/use-words.ts";

interface AirReadProps {
  readonly preview: AirPreview;
  readonly temperature: string;
  readonly pressure: string;
  readonly like: string;
  /** Takes the pressure as one of sea level; null where that is not the question. */
  readonly mend: (() => void) | null;
}

/** What the air is, in words, before it is kept: density, what is doubtful, and what it does to the setup. */
export function AirRead({ preview, temperature, pressure, like, mend }: AirReadProps) {
  const words = useWords().air;
  const { effect, warnings } = preview;
  const middle = effect === null ? null : effect[Math.floor(effect.length / 2)]!;
  return (
    <section class="stack" aria-live="polite">
      <p>
        <strong>{words.denser(preview.percentOfStandard - 100)}</strong> {words.doubt(preview.doubtPercent)}
      </p>
      <p class="quiet small">
        {words.read(temperature, pressure, preview.humidityPercent)} {words.like(like)}
      </p>
      {warnings.map(({ code, text }) => (
        <p key={code} class="caution">
          {text}
        </p>
      ))}
      {mend !== null && (
        <button type="button" class="button" onClick={mend}>
          {words.mend}
        </button>
      )}
      {middle !== null && (
        <>
          <h3>{words.effectTitle}</h3>
          <p>{words.effect(middle)}</p>
        </>
      )}
    </section>
  );
}
