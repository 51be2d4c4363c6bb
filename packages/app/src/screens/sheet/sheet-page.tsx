import type { Sheet } from "../../engine/answers/sheet/sheet.ts";
import { pressureText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { dayText } from "../../words/dates.ts";
import { figure, plainFigure } from "../../words/figures.ts";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { ChartTable } from "./chart-table.tsx";
import { QrCode } from "./qr-code.tsx";
import { rangeWords } from "./range-words.ts";

interface SheetPageProps {
  readonly sheet: Sheet;
  /** The address that carries the setup; null while it is made, "" where it is too long for a code. */
  readonly address: string | null;
}

/** The printed page itself: it must stay on one side of A4 and of Letter. */
export function SheetPage({ sheet, address }: SheetPageProps) {
  const whyNot = useRefusal();
  const all = useWords();
  const words = all.sheet;
  const [preferences] = usePreferences();
  const { language } = preferences;
  const mm = (size: number) => plainFigure(size, language);
  const { engine, carburetor, use } = sheet.description;
  const bore = carburetor?.bore;
  return (
    <article class="sheet" aria-label={words.title}>
      <header class="sheet-head">
        <h2>{sheet.name}</h2>
        <p>
          {[
            engine && all.home.strokes(engine.strokes),
            engine?.displacementCc !== undefined && all.home.cc(engine.displacementCc),
            bore &&
              words.body(
                bore.shape === "round"
                  ? `${mm(bore.diameterMm)} mm`
                  : `${mm(bore.widthMm)} × ${mm(bore.heightMm)} mm`,
              ),
            use,
          ]
            .filter(Boolean)
            .join(" · ")}
        </p>
      </header>
      <section class="sheet-fitted">
        <h3>{words.fitted}</h3>
        <table>
          <thead class="unseen">
            <tr>
              <th scope="col">{words.part}</th>
              <th scope="col">{words.is}</th>
              <th scope="col">{words.how}</th>
            </tr>
          </thead>
          <tbody>
            {sheet.parts.map(({ part, value, how }) => (
              <tr key={part}>
                <th scope="row">
                  {part === "screw"
                    ? words.parts[sheet.screw === "air" ? "airScrew" : "fuelScrew"]
                    : words.parts[part]}
                </th>
                <td>{value === null ? words.notKnown : <b>{value}</b>}</td>
                <td>{words.hows[how]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <section class="sheet-air">
        <h3>{sheet.markedAt === null ? words.noted : words.rightIn}</h3>
        <p>
          <b>
            {words.air(
              temperatureText(sheet.air.celsius, preferences),
              pressureText(sheet.air.hectopascal, preferences),
            )}
          </b>
          , {words.density(figure(sheet.air.density, 2, language))}
          {sheet.air.place === null ? "" : `, ${sheet.air.place}`}
        </p>
        <p>{sheet.fuel === null ? words.fuelNotKnown : words.fuel(sheet.fuel)}</p>
        <p class="sheet-small">
          {sheet.markedAt === null ? words.notMarked : words.marked(dayText(sheet.markedAt, language))}{" "}
          {sheet.air.notedAt === null && words.usualAir}
        </p>
        <h3>{words.mayMove}</h3>
        {sheet.range.ok ? (
          <>
            <ul class="sheet-list">
              {rangeWords(sheet.range.value, sheet.air.heightM, preferences, words).map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
            <p class="sheet-small">
              {words.mayMoveWhy} {words.otherFuel}
            </p>
          </>
        ) : (
          <p>
            {words.noRange} {whyNot(sheet.range)}
          </p>
        )}
      </section>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls sideways on a phone, so the keyboard must reach it */}
      <section class="sheet-wide" tabIndex={0} aria-label={words.chart}>
        <h3>{words.chart}</h3>
        {sheet.chart.ok ? <ChartTable chart={sheet.chart.value} /> : <p>{words.noChart}</p>}
      </section>
      <section class="sheet-stops">
        <h3>{words.stops}</h3>
        <ul class="sheet-list">
          {[words.pings, ...sheet.stops].map((stop) => (
            <li key={stop}>{stop}</li>
          ))}
        </ul>
        <p>
          <b>{words.stopNow}</b>
        </p>
        <h3>{words.next}</h3>
        <ul class="sheet-list">
          {sheet.next !== null && <li>{sheet.next.title}</li>}
          {sheet.checks.map((check) => (
            <li key={check}>{check}</li>
          ))}
          <li>{words.seasonal}</li>
        </ul>
      </section>
      <section class="sheet-mind">
        <h3>{words.watch}</h3>
        {sheet.next !== null && words.topLimit[sheet.next.topThrottle] !== "" && (
          <p>
            <b>{words.topLimit[sheet.next.topThrottle]}</b>
          </p>
        )}
        {sheet.cautions.map((text) => (
          <p key={text} class="sheet-small">
            {text}
          </p>
        ))}
      </section>
      <footer class="sheet-foot">
        <div class="sheet-sign">
          <p>{words.signed}</p>
          <p class="sheet-line">
            {[
              dayText(Date.now(), language),
              sheet.description.place?.name,
              preferences.person !== "" && words.for(preferences.person),
            ]
              .filter(Boolean)
              .join(" · ")}
          </p>
        </div>
        {address === "" && <p>{words.tooLong}</p>}
        {address !== null && address !== "" && (
          <figure>
            <QrCode text={address} label={words.scanLabel} />
            <figcaption class="sheet-small">{words.scan}</figcaption>
          </figure>
        )}
      </footer>
    </article>
  );
}
