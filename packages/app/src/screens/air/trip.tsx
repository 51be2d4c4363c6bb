import { useState } from "preact/hooks";
import { heightText, readHeight, readTemperature, temperatureUnit } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";

interface Row {
  readonly name: string;
  readonly height: string;
  readonly temperature: string;
}

const EMPTY: Row = { name: "", height: "", temperature: "" };

/** A ride over several heights: the safe main jet, what each place will feel like, and the way back. */
export function Trip({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const all = useWords().air;
  const words = all.trip;
  const [preferences] = usePreferences();
  const shop = useShop();
  const [rows, setRows] = useState<readonly Row[]>([EMPTY, EMPTY]);
  const change = (index: number, part: Partial<Row>) =>
    setRows((before) => before.map((row, i) => (i === index ? { ...row, ...part } : row)));
  const places = rows.flatMap((row, i) => {
    const heightM = readHeight(row.height, preferences);
    const celsius = readTemperature(row.temperature, preferences);
    const name = row.name.trim() === "" ? words.unnamed(i + 1) : row.name.trim();
    return heightM === null || celsius === null ? [] : [{ name, heightM, celsius }];
  });
  const plan = useAnswer("tripPlan", { bike, places });
  const keep = async (safe: number, decides: string, stops: readonly string[]) => {
    const text = [words.note(safe, decides), ...stops].join(" ");
    const kept = await shop.keep({ kind: "note", bike, body: { text } });
    say(kept.ok ? words.kept : kept.detail);
  };
  return (
    <Screen title={words.title} back={{ to: `/bike/${encodeURIComponent(bike)}`, words: all.bike }}>
      <p>{words.lead}</p>
      {rows.map((row, i) => (
        <fieldset key={i} class="stack">
          <legend class="unseen">{words.unnamed(i + 1)}</legend>
          <TextField
            label={words.place}
            value={row.name}
            onInput={(name) => change(i, { name })}
            placeholder={words.unnamed(i + 1)}
          />
          <NumberField
            label={all.height}
            value={row.height}
            onInput={(height) => change(i, { height })}
            unit={preferences.height}
          />
          <NumberField
            label={all.temperature}
            value={row.temperature}
            onInput={(temperature) => change(i, { temperature })}
            unit={temperatureUnit(preferences)}
          />
          {rows.length > 1 && (
            <button
              type="button"
              class="button plain"
              onClick={() => setRows(rows.filter((_, k) => k !== i))}
            >
              {words.remove(row.name.trim() || words.unnamed(i + 1))}
            </button>
          )}
        </fieldset>
      ))}
      <button type="button" class="button" onClick={() => setRows([...rows, EMPTY])}>
        {words.add}
      </button>
      {places.length === 0 && <p class="quiet">{words.tooFew}</p>}
      {places.length > 0 && plan !== null && !plan.ok && (
        <p class="warn" role="alert">
          {plan.detail}
        </p>
      )}
      {places.length > 0 && plan?.ok && (
        <>
          <section class="loud" aria-live="polite">
            <h2>{plan.value.safeMain === null ? words.none : words.safe(plan.value.safeMain)}</h2>
            <p>{words.decides(plan.value.decides)}</p>
            {plan.value.safeMain !== null && (
              <p>
                {plan.value.safeMain === plan.value.fittedMain
                  ? words.stays
                  : words.change(plan.value.fittedMain, plan.value.safeMain)}
              </p>
            )}
          </section>
          {plan.value.warnings.map((text) => (
            <p key={text} class="caution">
              {text}
            </p>
          ))}
          <ul class="rows">
            {plan.value.stops.map(({ name, heightM, half, full, main, backBelowM }) => (
              <li key={name} class="stack" style="padding:10px 0">
                <strong>
                  {name}, {heightText(heightM, preferences)}
                </strong>
                <span>
                  {words.half}: {words.feel(half)}. {words.full}: {words.feel(full)}.
                </span>
                {main !== null && plan.value.safeMain !== null && main < plan.value.safeMain && (
                  <span class="caution">
                    {words.would(
                      main,
                      backBelowM === null ? null : heightText(Math.ceil(backBelowM / 10) * 10, preferences),
                    )}
                  </span>
                )}
              </li>
            ))}
          </ul>
          {plan.value.safeMain !== null && (
            <button
              type="button"
              class="button main"
              onClick={() =>
                void keep(
                  plan.value.safeMain!,
                  plan.value.decides,
                  plan.value.stops.map(({ name, full }) => `${name}: ${words.feel(full)}.`),
                )
              }
            >
              {words.keep}
            </button>
          )}
        </>
      )}
    </Screen>
  );
}
