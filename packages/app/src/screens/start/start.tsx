import type { JetNumbering, ScrewKind, Use } from "@jetwright/core";
import { useState } from "preact/hooks";
import type { CallersBike } from "../../engine/answers/starting.ts";
import { readHeight, readTemperature, temperatureUnit } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField, typedNumber } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import { StartingResult } from "./starting-result.tsx";

/** A setup to begin with for a caller whose bike was never here. */
export function StartScreen() {
  const words = useWords().start;
  const [preferences] = usePreferences();
  const [strokes, setStrokes] = useState<"2" | "4">("2");
  const [displacement, setDisplacement] = useState("");
  const [bore, setBore] = useState("");
  const [use, setUse] = useState<Use | "">("");
  const [screw, setScrew] = useState<ScrewKind | "">("");
  const [numbering, setNumbering] = useState<JetNumbering | "">("");
  const [height, setHeight] = useState("");
  const [temperature, setTemperature] = useState("");
  const [tried, setTried] = useState(false);
  const [asked, setAsked] = useState<CallersBike | null>(null);

  const wrong = (typed: string): string | null =>
    typed.trim() !== "" && typedNumber(typed) === null ? words.wrongNumber : null;
  const heightM = readHeight(height, preferences);
  const temperatureC = readTemperature(temperature, preferences);

  const work = () => {
    setTried(true);
    if (wrong(displacement) || wrong(bore) || heightM === null || temperatureC === null) return;
    setAsked({
      strokes: strokes === "2" ? 2 : 4,
      displacementCc: typedNumber(displacement),
      boreMm: typedNumber(bore),
      use: use === "" ? null : use,
      screw: screw === "" ? null : screw,
      numbering: numbering === "" ? null : numbering,
      heightM,
      temperatureC,
    });
  };
  return (
    <Screen title={words.title} back={{ to: "/", words: words.back }} wide>
      <div class="columns stack apart">
        <form
          class="stack"
          onSubmit={(event) => {
            event.preventDefault();
            work();
          }}
        >
          <p class="quiet">{words.lead}</p>
          <Choice
            label={words.strokes}
            value={strokes}
            onChoose={setStrokes}
            options={[
              { value: "2", words: words.two },
              { value: "4", words: words.four },
            ]}
          />
          <NumberField
            label={words.displacement}
            value={displacement}
            onInput={setDisplacement}
            unit={words.cc}
            hint={words.displacementHint}
            wrong={wrong(displacement)}
          />
          <NumberField
            label={words.bore}
            value={bore}
            onInput={setBore}
            unit={words.mm}
            hint={words.boreHint}
            wrong={wrong(bore)}
          />
          <Choice
            label={words.use}
            value={use}
            onChoose={setUse}
            options={[
              { value: "trail", words: words.uses.trail },
              { value: "enduro", words: words.uses.enduro },
              { value: "race", words: words.uses.race },
              { value: "", words: words.notKnown },
            ]}
          />
          <Choice
            label={words.screw}
            value={screw}
            onChoose={setScrew}
            options={[
              { value: "air", words: words.airScrew },
              { value: "fuel", words: words.fuelScrew },
              { value: "", words: words.notKnown },
            ]}
          />
          <Choice
            label={words.numbering}
            value={numbering}
            onChoose={setNumbering}
            options={[
              { value: "bore", words: words.boreNumber },
              { value: "flow", words: words.flowNumber },
              { value: "", words: words.notKnown },
            ]}
          />
          <NumberField
            label={words.height}
            value={height}
            onInput={setHeight}
            unit={preferences.height}
            wrong={
              (tried || height !== "") && heightM === null && (tried || height.length > 4)
                ? words.wrongHeight
                : null
            }
          />
          <NumberField
            label={words.temperature}
            value={temperature}
            onInput={setTemperature}
            unit={temperatureUnit(preferences)}
            wrong={tried && temperatureC === null ? words.wrongTemperature : null}
          />
          <button type="submit" class="button main">
            {words.go}
          </button>
        </form>
        {asked !== null && <StartingResult asked={asked} />}
      </div>
    </Screen>
  );
}
