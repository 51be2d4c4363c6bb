import type { SmallCell, SmallChart } from "../../engine/answers/sheet/small-chart.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { plainFigure } from "../../words/figures.ts";
import { useWords } from "../../words/use-words.ts";

/** The small chart: heights down, temperatures across; what stays as it is stands framed. */
export function ChartTable({ chart }: { readonly chart: SmallChart }) {
  const words = useWords().sheet;
  return (
    <>
      <table class="sheet-chart">
        <thead>
          <tr>
            <td />
            {chart.temperatures.map((temperature) => (
              <th key={temperature} scope="col">
                {String(temperature).replace("-", "−")} °{chart.temperatureUnit}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {chart.cells.map((row, i) => (
            <tr key={chart.heights[i]}>
              <th scope="row">
                {chart.heights[i]} {chart.heightUnit}
              </th>
              {row.map((cell, j) => (
                <td key={chart.temperatures[j]} class={cell.asIs ? "as-is" : undefined}>
                  <CellWords cell={cell} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="sheet-small">{words.chartKey}</p>
    </>
  );
}

function CellWords({ cell }: { readonly cell: SmallCell }) {
  const words = useWords().sheet;
  const [{ language }] = usePreferences();
  if (cell.asIs) return <b>{cell.main === null ? words.asIs : plainFigure(cell.main, language)}</b>;
  const off = Math.abs(cell.furthest).toFixed(0);
  if (cell.main === null) return <>{cell.furthest > 0 ? words.rich(off) : words.lean(off)}</>;
  return (
    <>
      {plainFigure(cell.main, language)}
      {cell.clip !== null && <span class="sheet-clip">{words.clip(cell.clip)}</span>}
    </>
  );
}
