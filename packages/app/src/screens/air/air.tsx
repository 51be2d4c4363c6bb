import type { JsonObject } from "@jetwright/records";
import { useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import { heightText, temperatureUnit } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { type AirField, readAir, type TypedAir } from "./air-body.ts";
import { AirRead } from "./air-read.tsx";
import { LastHere } from "./last-here.tsx";

/** A height of null is not typed yet: the place of the bike stands there. */
type Typed = Omit<TypedAir, "height"> & { readonly height: string | null };

const NOTHING: Typed = {
  way: "hand",
  temperature: "",
  height: null,
  pressureKind: "station",
  pressure: "",
  humidityKind: "none",
  humidity: "",
  report: "",
  stationHeight: "",
};

/** The air it will be ridden in: by instruments, by a weather report, or by height and temperature alone. */
export function Air({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().air;
  const [preferences] = usePreferences();
  const shop = useShop();
  const [, go] = useLocation();
  const [typed, setTyped] = useState<Typed>(NOTHING);
  const [failed, setFailed] = useState<string | null>(null);
  const [now] = useState(() => Date.now());
  const set = (change: Partial<Typed>) => {
    setTyped((before) => ({ ...before, ...change }));
    setFailed(null);
  };

  const place = useAnswer("bike", { bike })?.description?.place;
  const usualHeight = place?.heightM === undefined ? "" : heightText(place.heightM, preferences);
  const filled: TypedAir = { ...typed, height: typed.height ?? usualHeight };
  const { body: read, wrong } = readAir(filled, preferences);
  const atHome = place?.name !== undefined && typed.height === null && read?.heightM !== undefined;
  const body = read === null ? null : { ...read, ...(atHome ? { place: place.name } : {}) };
  const preview = useAnswer("airPreview", { bike, body: body ?? {}, at: now });

  const home = `/bike/${encodeURIComponent(bike)}`;
  const keep = async () => {
    if (body === null) return;
    const { air } = await shop.engine.ask("airPreview", { bike, body, at: Date.now() });
    const kept = air.ok ? await shop.keep({ kind: "air-measured", bike, body: body as JsonObject }) : air;
    if (!kept.ok) {
      setFailed(kept.detail);
      return;
    }
    const record = kept.value[0]!;
    const why = words.mistaken;
    say(words.kept, {
      words: words.undo,
      act: () => void shop.keep({ kind: "record-struck", bike, body: { record, why } }),
    });
    go(home);
  };

  const field = (name: AirField, label: string, unit: string, hint?: string) => (
    <NumberField
      label={label}
      value={filled[name]}
      onInput={(text) => set({ [name]: text })}
      unit={unit}
      hint={hint}
      wrong={wrong.has(name) ? words.notANumber : null}
    />
  );
  const degrees = temperatureUnit(preferences);
  return (
    <Screen
      title={words.title}
      back={{ to: home, words: words.bike }}
      // At the foot: what is read of the air comes in above it, and must not push it away from a finger.
      bar={
        <button
          type="button"
          class="main"
          disabled={body === null || preview?.air.ok === false}
          onClick={() => void keep()}
        >
          {words.keep}
        </button>
      }
      wide
    >
      <div class="columns">
        <div class="column">
          <Choice
            label={words.way}
            hideLabel
            value={typed.way}
            onChoose={(way) => set({ way })}
            options={[
              { value: "hand", words: words.byHand },
              { value: "report", words: words.byReport },
              { value: "height", words: words.byHeight },
            ]}
          />
          {typed.way === "hand" && (
            <>
              {field("temperature", words.temperature, degrees)}
              {field("height", words.height, preferences.height)}
              <Choice
                label={words.pressureKind}
                down
                value={typed.pressureKind}
                onChoose={(pressureKind) => set({ pressureKind })}
                options={[
                  { value: "station", words: words.station, hint: words.stationHint },
                  { value: "seaLevel", words: words.seaLevel, hint: words.seaLevelHint },
                  { value: "none", words: words.noPressure, hint: words.noPressureHint },
                ]}
              />
              {typed.pressureKind !== "none" && field("pressure", words.pressure, preferences.pressure)}
              <Choice
                label={words.humidityKind}
                value={typed.humidityKind}
                onChoose={(humidityKind) => set({ humidityKind, humidity: "" })}
                options={[
                  { value: "none", words: words.noHumidity },
                  { value: "percent", words: words.percent },
                  { value: "dewPoint", words: words.dewPoint },
                ]}
              />
              {typed.humidityKind === "percent" && field("humidity", words.humidity, "%")}
              {typed.humidityKind === "dewPoint" && field("humidity", words.dewPoint, degrees)}
            </>
          )}
          {typed.way === "report" && (
            <>
              <TextField
                label={words.report}
                lines={3}
                value={typed.report}
                onInput={(report) => set({ report })}
                hint={words.reportHint}
                placeholder={words.reportExample}
              />
              {field("height", words.height, preferences.height, words.reportHeights)}
              {field("stationHeight", words.stationHeight, preferences.height, words.stationHeightHint)}
              {field("temperature", words.temperatureHere, degrees)}
            </>
          )}
          {typed.way === "height" && (
            <>
              <p class="quiet">{words.heightOnly}</p>
              {field("height", words.height, preferences.height)}
              {field("temperature", words.temperature, degrees)}
            </>
          )}
          {body !== null && preview !== null && (
            <AirRead preview={preview} onMend={(pressureKind) => set({ pressureKind })} />
          )}
          {failed !== null && (
            <p class="caution" role="alert">
              {failed}
            </p>
          )}
        </div>
        {(body === null || preview?.air.ok) && <LastHere bike={bike} body={body} place={body?.place ?? ""} />}
      </div>
    </Screen>
  );
}
