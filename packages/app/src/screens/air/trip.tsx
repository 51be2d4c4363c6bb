import { useState } from "preact/hooks";
import type { JetSource } from "../../engine/answers/air/mains-at-hand.ts";
import type { TripPlan } from "../../engine/answers/air/trip-plan.ts";
import {
  heightText,
  readHeight,
  readTemperature,
  temperatureText,
  temperatureUnit,
} from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { LastHere } from "./last-here.tsx";
import { TripResult, useTripWords } from "./trip-result.tsx";
import "../../styles/air.css";

interface Row {
  readonly key: number;
  readonly name: string;
  readonly height: string;
  readonly temperature: string;
}

const empty = (key: number): Row => ({ key, name: "", height: "", temperature: "" });

/** A ride over several heights: the safe main jet, what each place will feel like, and the way back. */
export function Trip({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const whyNot = useRefusal();
  const all = useWords().air;
  const words = all.trip;
  const [preferences] = usePreferences();
  const shop = useShop();
  const [rows, setRows] = useState<readonly Row[]>([empty(1), empty(2)]);
  const [source, setSource] = useState<JetSource>("sold");
  const change = (key: number, part: Partial<Row>) =>
    setRows((before) => before.map((row) => (row.key === key ? { ...row, ...part } : row)));
  const nameOf = (row: Row) =>
    row.name.trim() === "" ? words.unnamed(rows.indexOf(row) + 1) : row.name.trim();
  const remove = (row: Row) => {
    const at = rows.indexOf(row);
    setRows((before) => before.filter(({ key }) => key !== row.key));
    say(words.removed(nameOf(row)), {
      words: all.undo,
      act: () => setRows((before) => [...before.slice(0, at), row, ...before.slice(at)]),
    });
  };
  const read = rows.map((row) => ({
    row,
    heightM: readHeight(row.height, preferences),
    celsius: readTemperature(row.temperature, preferences),
  }));
  const places = read.flatMap(({ row, heightM, celsius }) =>
    heightM === null || celsius === null ? [] : [{ name: nameOf(row), heightM, celsius }],
  );
  const plan = useAnswer("tripPlan", { bike, places, source });
  const { noteOf } = useTripWords();
  const keep = async (made: TripPlan) => {
    const kept = await shop.keep({ kind: "note", bike, body: { text: noteOf(made) } });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    const record = kept.value[0]!;
    const why = all.mistaken;
    say(words.kept, {
      words: all.undo,
      act: () => void shop.keep({ kind: "record-struck", bike, body: { record, why } }),
    });
  };
  const wrong = (text: string, value: number | null) =>
    text.trim() !== "" && value === null ? all.notANumber : null;
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: all.bike }}>
      <p>{words.lead}</p>
      {read.map(({ row, heightM, celsius }) => (
        <fieldset key={row.key} class="trip-place">
          <legend class="unseen">{nameOf(row)}</legend>
          <TextField
            label={words.place}
            value={row.name}
            onInput={(name) => change(row.key, { name })}
            placeholder={words.unnamed(rows.indexOf(row) + 1)}
          />
          <div class="fields">
            <NumberField
              label={words.height}
              value={row.height}
              onInput={(height) => change(row.key, { height })}
              unit={preferences.height}
              wrong={wrong(row.height, heightM)}
            />
            <NumberField
              label={words.temperature}
              value={row.temperature}
              onInput={(temperature) => change(row.key, { temperature })}
              unit={temperatureUnit(preferences)}
              wrong={wrong(row.temperature, celsius)}
            />
          </div>
          {rows.length > 1 && (
            <button type="button" class="button plain" onClick={() => remove(row)}>
              {words.remove(nameOf(row))}
            </button>
          )}
        </fieldset>
      ))}
      <button
        type="button"
        class="button"
        onClick={() => setRows([...rows, empty(1 + Math.max(0, ...rows.map(({ key }) => key)))])}
      >
        {words.add}
      </button>
      <Choice
        label={all.source}
        value={source}
        onChoose={setSource}
        options={[
          { value: "sold", words: all.sold },
          { value: "drawer", words: all.drawer },
        ]}
      />
      {places.length === 0 && <p class="quiet">{words.tooFew}</p>}
      {places.length > 0 && plan !== null && !plan.ok && (
        <p class="caution" role="alert">
          {whyNot(plan)}
        </p>
      )}
      {places.length > 0 && plan?.ok && (
        <>
          <TripResult plan={plan.value} />
          <p class="quiet small">
            {words.from(
              temperatureText(Math.round(plan.value.from.celsius), preferences),
              heightText(plan.value.from.heightM, preferences),
            )}
          </p>
          {plan.value.safeMain !== null && (
            <button type="button" class="button main" onClick={() => void keep(plan.value)}>
              {words.keep}
            </button>
          )}
          {places.map(({ name, heightM, celsius }) => (
            <LastHere
              key={name}
              bike={bike}
              body={{ heightM, temperatureC: celsius, place: name }}
              place={name}
            />
          ))}
        </>
      )}
    </Screen>
  );
}
