import type { ReportRead } from "../../engine/answers/air/report-read.ts";
import { pressureText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useWords } from "../../words/use-words.ts";

/** What was understood of a weather report, line by line. */
export function ReportFigures({ report }: { readonly report: ReportRead }) {
  const words = useWords().air;
  const [preferences] = usePreferences();
  const { station, time, ageMinutes, celsius, dewPointC, altimeterHpa, stationHpa } = report;
  const made =
    time === null
      ? null
      : [words.time(time.day, time.hour, time.minute), ageMinutes === null ? null : words.age(ageMinutes)]
          .filter((part) => part !== null)
          .join(", ");
  const temperature = (value: number | null) => (value === null ? null : temperatureText(value, preferences));
  const pressure = (value: number | null) => (value === null ? null : pressureText(value, preferences));
  const lines = [
    [words.readStation, station],
    [words.readTime, made],
    [words.readTemperature, temperature(celsius)],
    [words.readDewPoint, temperature(dewPointC)],
    [words.readAltimeter, pressure(altimeterHpa)],
    ...(stationHpa === null ? [] : [[words.readStationPressure, pressure(stationHpa)] as const]),
  ] as const;
  return (
    <section>
      <h3>{words.readTitle}</h3>
      <table>
        <tbody>
          {lines.map(([name, value]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td class="number">{value ?? <span class="quiet">{words.notSaid}</span>}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
