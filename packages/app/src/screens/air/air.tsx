import type { JsonObject } from "@jetwright/records";
import { useState } from "preact/hooks";
import type { AirBody } from "../../engine/answers/air/air-preview.ts";
import {
  heightText,
  pressureText,
  readHeight,
  readPressure,
  readTemperature,
  temperatureText,
  temperatureUnit,
} from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField, typedNumber } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { AirRead } from "./air-read.tsx";

type Way = "hand" | "report" | "height";

interface Typed {
  readonly temperature: string;
  readonly height: string;
  readonly pressure: string;
  readonly humidity: string;
  readonly report: string;
  readonly pressureKind: "station" | "seaLevel" | "none";
}

const NOTHING: Typed = {
  temperature: "",
  height: "",
  pressure: "",
  humidity: "",
  report: "",
  pressureKind: "station",
};

/** The air it will be ridden in: by instruments, by a weather report, or by height and temperature alone. */
export function Air({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().air;
  const [preferences] = usePreferences();
  const shop = useShop();
  const [way, setWay] = useState<Way>("hand");
  const [typed, setTyped] = useState<Typed>(NOTHING);
  const [failed, setFailed] = useState<string | null>(null);
  const set = (change: Partial<Typed>) => setTyped((before) => ({ ...before, ...change }));
  const [now] = useState(() => Date.now());

  const temperature = readTemperature(typed.temperature, preferences);
  const height = readHeight(typed.height, preferences);
  const pressure = readPressure(typed.pressure, preferences);
  const wrong = (text: string, read: number | null) =>
    text.trim() !== "" && read === null ? words.notANumber : null;
  const body = bodyOf(way, typed, { temperature, height, pressure });
  const preview = useAnswer("airPreview", { bike, body: body ?? {}, at: now });
  const read = body !== null && preview !== null ? preview : null;

  const keep = async () => {
    if (body === null) return;
    const kept = await shop.keep({ kind: "air-measured", bike, body: body as JsonObject });
    if (!kept.ok) {
      setFailed(kept.detail);
      return;
    }
    const [record] = kept.value;
    say(words.kept, {
      words: words.undo,
      act: () =>
        void shop.keep({ kind: "record-struck", bike, body: { record: record!, why: words.mistaken } }),
    });
    window.history.back();
  };

  const heightField = (
    <NumberField
      label={words.height}
      value={typed.height}
      onInput={(text) => set({ height: text })}
      unit={preferences.height}
      wrong={wrong(typed.height, height)}
    />
  );
  const temperatureField = (
    <NumberField
      label={words.temperature}
      value={typed.temperature}
      onInput={(text) => set({ temperature: text })}
      unit={temperatureUnit(preferences)}
      wrong={wrong(typed.temperature, temperature)}
    />
  );
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: words.bike }}>
      <Choice
        label={words.way}
        hideLabel
        value={way}
        onChoose={setWay}
        options={[
          { value: "hand", words: words.byHand },
          { value: "report", words: words.byReport },
          { value: "height", words: words.byHeight },
        ]}
      />
      {way === "hand" && (
        <>
          {temperatureField}
          {heightField}
          <Choice
            label={words.pressureKind}
            down
            value={typed.pressureKind}
            onChoose={(pressureKind) => set({ pressureKind })}
            options={[
              { value: "station", words: words.station },
              { value: "seaLevel", words: words.seaLevel },
              { value: "none", words: words.noPressure },
            ]}
          />
          {typed.pressureKind !== "none" && (
            <NumberField
              label={words.pressure}
              value={typed.pressure}
              onInput={(text) => set({ pressure: text })}
              unit={preferences.pressure}
              wrong={wrong(typed.pressure, pressure)}
            />
          )}
          <NumberField
            label={words.humidity}
            value={typed.humidity}
            onInput={(text) => set({ humidity: text })}
            unit="%"
            hint={words.humidityHint}
          />
        </>
      )}
      {way === "report" && (
        <>
          <TextField
            label={words.report}
            lines={3}
            value={typed.report}
            onInput={(report) => set({ report })}
            hint={words.reportHint}
            placeholder={words.reportExample}
          />
          {heightField}
        </>
      )}
      {way === "height" && (
        <>
          {heightField}
          {temperatureField}
        </>
      )}
      {read !== null &&
        (read.ok ? (
          <AirRead
            preview={read.value}
            temperature={temperatureText(read.value.celsius, preferences)}
            pressure={pressureText(read.value.hectopascal, preferences)}
            like={heightText(read.value.likeHeightM, preferences)}
            mend={
              typed.pressureKind === "station" &&
              read.value.warnings.some(({ code }) => code.includes("sea-level"))
                ? () => set({ pressureKind: "seaLevel" })
                : null
            }
          />
        ) : (
          <p class="warn" role="alert">
            {read.detail}
          </p>
        ))}
      {failed !== null && (
        <p class="warn" role="alert">
          {failed}
        </p>
      )}
      <button type="button" class="button main" disabled={!read?.ok} onClick={() => void keep()}>
        {words.keep}
      </button>
    </Screen>
  );
}

interface Numbers {
  readonly temperature: number | null;
  readonly height: number | null;
  readonly pressure: number | null;
}

/** The record's body from what was typed; null while it says too little. */
function bodyOf(way: Way, typed: Typed, { temperature, height, pressure }: Numbers): AirBody | null {
  const humidity = typedNumber(typed.humidity);
  const known = <Key extends string>(key: Key, value: number | null) =>
    value === null ? {} : ({ [key]: value } as Record<Key, number>);
  if (way === "report") {
    return typed.report.trim() === "" ? null : { report: typed.report, ...known("heightM", height) };
  }
  if (way === "height") {
    return height === null ? null : { ...known("heightM", height), ...known("temperatureC", temperature) };
  }
  if (temperature === null) return null;
  if (typed.pressureKind === "none" ? height === null : pressure === null) return null;
  return {
    temperatureC: temperature,
    ...known("heightM", height),
    ...(typed.pressureKind === "station" ? known("stationPressureHpa", pressure) : {}),
    ...(typed.pressureKind === "seaLevel" ? known("seaLevelPressureHpa", pressure) : {}),
    ...known("humidityPercent", humidity),
  };
}
