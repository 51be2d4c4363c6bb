import type { TripPlan } from "../../engine/answers/air/trip-plan.ts";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useWords } from "../../words/use-words.ts";

/** Rounded up to tens, so that the jet is back in time. */
const warnBelow = (metres: number): number => Math.ceil(metres / 10) * 10;

/** The sentences of a plan, on the screen and in the note for the way back. */
export function useTripWords() {
  const words = useWords().air.trip;
  const [preferences] = usePreferences();
  const decides = ({ decides: { name, heightM, celsius } }: TripPlan): string =>
    words.decides(name, heightText(heightM, preferences), temperatureText(celsius, preferences));
  const feels = ({ half, full }: TripPlan["stops"][number]): string =>
    words.stop(words.feel(half), words.feel(full));
  const back = (safe: number, { backBelowM }: TripPlan["stops"][number]): string =>
    words.back(safe, backBelowM === null ? null : heightText(warnBelow(backBelowM), preferences));
  const noteOf = (plan: TripPlan): string => {
    const safe = plan.safeMain!;
    const lines = plan.stops.map((stop) => {
      const smaller = stop.main === null ? "" : ` ${words.would(stop.main)} ${back(safe, stop)}`;
      return `${stop.name}, ${heightText(stop.heightM, preferences)}: ${feels(stop)}${smaller}`;
    });
    return [words.note(safe, decides(plan)), ...lines].join("\n");
  };
  return { decides, feels, back, noteOf };
}

export function TripResult({ plan }: { readonly plan: TripPlan }) {
  const words = useWords().air.trip;
  const [preferences] = usePreferences();
  const { decides, feels, back } = useTripWords();
  const { safeMain, safeOwned, fittedMain, stops, warnings } = plan;
  return (
    <>
      <section class="loud" aria-live="polite">
        <h2>{safeMain === null ? words.none : words.safe(safeMain)}</h2>
        <p>{decides(plan)}</p>
        {safeMain !== null && (
          <p>
            {safeMain === fittedMain ? words.stays : words.change(fittedMain, safeMain)}
            {!safeOwned && ` ${words.notOwned(safeMain)}`}
          </p>
        )}
      </section>
      {warnings.map((text) => (
        <p key={text} class="caution">
          {text}
        </p>
      ))}
      <h2>{words.feels}</h2>
      <ul class="rows">
        {stops.map((stop, i) => (
          <li key={i} class="trip-stop">
            <h3>
              {stop.name}, {heightText(stop.heightM, preferences)},{" "}
              {temperatureText(stop.celsius, preferences)}
            </h3>
            <p>{feels(stop)}</p>
            {stop.main !== null && safeMain !== null && (
              <>
                <p>
                  {words.would(stop.main)}
                  {!stop.mainOwned && ` ${words.notOwned(stop.main)}`}
                </p>
                <p class="caution">{back(safeMain, stop)}</p>
              </>
            )}
          </li>
        ))}
      </ul>
    </>
  );
}
