import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";

const HEIGHTS = [0, 500, 1000, 1500, 2000, 2500, 3000];
const CELSIUS = [-10, 0, 10, 20, 30, 40];

/** Main jet and clip for this bike by height and temperature. */
export function Chart({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const all = useWords().air;
  const words = all.chart;
  const [preferences] = usePreferences();
  const chart = useAnswer("heightChart", { bike, heights: HEIGHTS, celsius: CELSIUS });
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: all.bike }}>
      <p>{words.lead}</p>
      {chart !== null && !chart.ok && (
        <p class="warn" role="alert">
          {chart.detail}
        </p>
      )}
      {chart?.ok && (
        <section class="scrolls" aria-label={words.title}>
          <table>
            <thead>
              <tr>
                <th scope="col">{words.corner}</th>
                {chart.value.celsius.map((celsius) => (
                  <th key={celsius} scope="col" class="number">
                    {temperatureText(celsius, preferences)}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {chart.value.cells.map((row, r) => (
                <tr key={chart.value.heights[r]}>
                  <th scope="row">{heightText(chart.value.heights[r]!, preferences)}</th>
                  {row.map(({ main, clip }, c) => {
                    const here = chart.value.base?.row === r && chart.value.base.column === c;
                    return (
                      <td
                        key={chart.value.celsius[c]}
                        class="number"
                        style={here ? "outline:3px solid var(--line);outline-offset:-3px" : undefined}
                      >
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
      )}
      <p class="quiet small">{words.legend}</p>
    </Screen>
  );
}
