import type { AirEffect, AirFigures, AirPreview } from "../../engine/answers/air/air-preview.ts";
import { dayText } from "../../preferences/day.ts";
import { heightText, pressureText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { ReportFigures } from "./report-figures.tsx";

interface AirReadProps {
  readonly preview: AirPreview;
  /** Takes the pressure as one of the other kind. */
  readonly onMend: (kind: "station" | "seaLevel") => void;
}

/** What the air is, in words, before it is kept: density, what is doubtful, and what it does to the setup. */
export function AirRead({ preview, onMend }: AirReadProps) {
  const whyNot = useRefusal();
  const words = useWords().air;
  const { air, effect, report, mend } = preview;
  return (
    <section class="stack" aria-live="polite">
      {report !== null && <ReportFigures report={report} />}
      {air.ok ? (
        <Density figures={air.value} />
      ) : (
        <p class="caution" role="alert">
          {whyNot(air)}
        </p>
      )}
      {mend !== null && (
        <button
          type="button"
          class="button"
          onClick={() => onMend(mend === "sea level" ? "seaLevel" : "station")}
        >
          {mend === "sea level" ? words.mendSeaLevel : words.mendStation}
        </button>
      )}
      {air.ok &&
        air.value.warnings
          .filter(({ mild }) => mild)
          .map(({ code, text }) => (
            <p key={code} class="quiet small">
              {text}
            </p>
          ))}
      {effect !== null && <h2>{words.effectTitle}</h2>}
      {effect !== null && (effect.ok ? <Effect effect={effect.value} /> : <p>{whyNot(effect)}</p>)}
    </section>
  );
}

function Density({ figures }: { readonly figures: AirFigures }) {
  const words = useWords().air;
  const [preferences] = usePreferences();
  return (
    <>
      <h2>{words.densityTitle}</h2>
      <p>
        <strong>{words.denser(figures.percentOfStandard - 100)}</strong> {words.doubt(figures.doubtPercent)}
      </p>
      <p class="quiet small">
        {words.read(
          temperatureText(figures.celsius, preferences),
          pressureText(figures.hectopascal, preferences),
          figures.humidityPercent,
        )}{" "}
        {words.like(heightText(Math.round(figures.likeHeightM / 10) * 10, preferences))}
      </p>
      {figures.warnings
        .filter(({ mild }) => !mild)
        .map(({ code, text }) => (
          <p key={code} class="caution">
            {text}
          </p>
        ))}
    </>
  );
}

function Effect({ effect: { from, at } }: { readonly effect: AirEffect }) {
  const { air: words, pictures } = useWords();
  const names = pictures.opening;
  const [preferences] = usePreferences();
  const temperature = temperatureText(Math.round(from.celsius), preferences);
  const height = heightText(from.heightM, preferences);
  return (
    <>
      <p>
        {from.markedAt === null
          ? words.fromNoted(temperature, height)
          : words.fromMarked(dayText(from.markedAt, preferences), temperature, height)}
      </p>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.opening}</th>
            <th scope="col" class="number">
              {words.mixture}
            </th>
          </tr>
        </thead>
        <tbody>
          {at.map(({ opening, percent }) => (
            <tr key={opening}>
              <th scope="row">{names[opening] ?? opening}</th>
              <td class={Math.abs(percent) < 0.5 ? "number" : percent > 0 ? "number rich" : "number lean"}>
                {words.effect(percent)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}
