import { fromFahrenheit, fromFoot, toCelsius } from "@jetwright/core";
import { useState } from "preact/hooks";
import { Link } from "wouter-preact";
import type { HeightChart } from "../../engine/answers/air/height-chart.ts";
import type { JetSource } from "../../engine/answers/air/mains-at-hand.ts";
import { dayText } from "../../preferences/day.ts";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import "../../styles/air.css";
import { bikeAddress } from "../bike/bike-bar.tsx";

const HEIGHTS = {
  m: [0, 500, 1000, 1500, 2000, 2500, 3000],
  ft: [0, 2000, 4000, 6000, 8000, 10_000].map(fromFoot),
} as const;
const CELSIUS = {
  C: [-5, 5, 15, 25, 35],
  F: [20, 40, 60, 80, 100].map((fahrenheit) => toCelsius(fromFahrenheit(fahrenheit))),
} as const;

/** Main jet and clip for this bike by height and temperature. */
export function Chart({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const whyNot = useRefusal();
  const all = useWords().air;
  const words = all.chart;
  const [preferences] = usePreferences();
  const [source, setSource] = useState<JetSource>("sold");
  const chart = useAnswer("heightChart", {
    bike,
    heights: HEIGHTS[preferences.height],
    celsius: CELSIUS[preferences.temperature],
    source,
  });
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: all.bike }}>
      <p>{words.lead}</p>
      {chart !== null && !chart.ok && (
        <p class="caution" role="alert">
          {whyNot(chart)}
        </p>
      )}
      {chart?.ok && <Table bike={bike} chart={chart.value} />}
      <Choice
        label={all.source}
        value={source}
        onChoose={setSource}
        options={[
          { value: "sold", words: all.sold },
          { value: "drawer", words: all.drawer },
        ]}
      />
    </Screen>
  );
}

function Table({ bike, chart }: { readonly bike: string; readonly chart: HeightChart }) {
  const all = useWords().air;
  const words = all.chart;
  const [preferences] = usePreferences();
  const { from, heights, celsius, cells, base, fitted } = chart;
  const temperature = temperatureText(Math.round(from.celsius), preferences);
  const height = heightText(from.heightM, preferences);
  const dashed = fitted.main !== null && cells.some((row) => row.some(({ main }) => main === null));
  return (
    <>
      <p>
        {from.markedAt === null
          ? words.fromNoted(temperature, height)
          : words.fromMarked(dayText(from.markedAt, preferences), temperature, height)}
      </p>
      {from.markedAt === null && (
        <Link class="button plain" href={bikeAddress(bike, "next")}>
          {words.mendFirst}
        </Link>
      )}
      {fitted.main === null && <p class="caution">{words.unknownMain}</p>}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a stretch that scrolls must be reached by the keyboard */}
      <section class="scrolls" aria-label={words.title} tabIndex={0}>
        <table class="height-chart">
          <thead>
            <tr>
              <th scope="col">{words.corner}</th>
              {celsius.map((degrees) => (
                <th key={degrees} scope="col" class="number">
                  {temperatureText(degrees, preferences)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {cells.map((row, r) => (
              <tr key={heights[r]}>
                <th scope="row" class="number">
                  {heightText(heights[r]!, preferences)}
                </th>
                {row.map(({ main, clip }, c) => {
                  const here = base.row === r && base.column === c;
                  return (
                    <td key={celsius[c]} class={here ? "number here" : "number"}>
                      {words.cell(main, clip)}
                      {here && <span class="unseen">{words.here}</span>}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <p class="quiet small">
        {words.legend} {dashed && words.noneRich}
      </p>
    </>
  );
}
