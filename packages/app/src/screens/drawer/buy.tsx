import { useState } from "preact/hooks";
import { readHeight, readTemperature, temperatureUnit } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { useWords } from "../../words/use-words.ts";
import { typedRow } from "./typed-numbers.ts";

/** The fewest jets that cover the heights and temperatures this shop rides in. */
export function Buy() {
  const all = useWords().drawer;
  const words = all.buyScreen;
  const [preferences] = usePreferences();
  const [heights, setHeights] = useState(preferences.height === "ft" ? "0 3000 6000" : "0 1000 2000");
  const [temperatures, setTemperatures] = useState(preferences.temperature === "F" ? "32 60 90" : "0 15 30");
  const metres = typedRow(heights, (word) => readHeight(word, preferences));
  const celsius = typedRow(temperatures, (word) => readTemperature(word, preferences));
  const corners = (metres ?? []).flatMap((heightM) =>
    (celsius ?? []).map((each) => ({ heightM, celsius: each })),
  );
  const wanted = useAnswer("jetsWanted", { corners });
  return (
    <Screen title={words.title} back={{ to: "/drawer", words: all.back }}>
      <p>{words.lead}</p>
      <TextField
        label={`${words.heights} (${preferences.height})`}
        value={heights}
        onInput={setHeights}
        hint={words.hint}
        wrong={metres === null ? words.wrong : null}
      />
      <TextField
        label={`${words.temperatures} (${temperatureUnit(preferences)})`}
        value={temperatures}
        onInput={setTemperatures}
        hint={words.hint}
        wrong={celsius === null ? words.wrong : null}
      />
      {corners.length > 0 && wanted !== null && !wanted.ok && <p class="warn">{wanted.detail}</p>}
      {corners.length > 0 && wanted?.ok && (
        <>
          {wanted.value.kinds.map(({ numbering, maker, buy, served, outOfReach }) => (
            <section key={`${numbering} ${maker}`} aria-live="polite">
              <h3>{all.kind(numbering, maker)}</h3>
              {buy.length === 0 && <p>{words.nothing}</p>}
              <ul class="rows">
                {buy.map(({ number, serves }) => (
                  <li key={number} class="row">
                    <strong>{words.jet(number)}</strong>
                    <span class="quiet small">
                      {words.serves([...new Set(serves.map(({ bike }) => bike))].join(", "), serves.length)}
                    </span>
                  </li>
                ))}
              </ul>
              {served > 0 && <p class="quiet small">{words.served(served)}</p>}
              {outOfReach > 0 && <p class="quiet small">{words.out(outOfReach)}</p>}
            </section>
          ))}
          {wanted.value.leftOut.length > 0 && (
            <details>
              <summary>{words.leftOut}</summary>
              <ul class="stack">
                {wanted.value.leftOut.map(({ bike, why }) => (
                  <li key={bike}>
                    {bike}: {why}
                  </li>
                ))}
              </ul>
            </details>
          )}
        </>
      )}
    </Screen>
  );
}
