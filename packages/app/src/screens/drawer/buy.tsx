import { useEffect, useState } from "preact/hooks";
import type { BoughtFor, KindToBuy } from "../../engine/answers/drawer/jets-wanted.ts";
import type { RangeGiven } from "../../engine/answers/drawer/riding-range.ts";
import {
  heightText,
  readHeight,
  readTemperature,
  temperatureText,
  temperatureUnit,
} from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/air.css";

type Field = keyof RangeGiven;
const FIELDS = ["lowestM", "highestM", "coldestC", "hottestC"] as const satisfies readonly Field[];
const LABEL = {
  lowestM: "lowest",
  highestM: "highest",
  coldestC: "coldest",
  hottestC: "hottest",
} as const satisfies Record<Field, string>;
const isHeight = (field: Field): boolean => field.endsWith("M");

/** Typing has paused for this long before the whole shop is reckoned again. */
const PAUSE = 400;

/** The value as it was when it last stood still. */
function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState(value);
  const text = JSON.stringify(value);
  useEffect(() => {
    const timer = setTimeout(() => setSettled(JSON.parse(text) as Value), PAUSE);
    return () => clearTimeout(timer);
  }, [text]);
  return settled;
}

/** The fewest jets that cover the heights and temperatures this shop rides in. */
export function Buy() {
  const all = useWords().drawer;
  const words = all.buyScreen;
  const [preferences] = usePreferences();
  const own = useAnswer("ridingRange", null);
  /** Fields typed over; the others hold what the log tells. */
  const [typed, setTyped] = useState<Partial<Record<Field, string>>>({});
  const textOf = (field: Field): string => {
    if (typed[field] !== undefined) return typed[field];
    if (!own?.ok) return "";
    const value = own.value[field];
    return isHeight(field) ? heightText(value, preferences) : temperatureText(value, preferences);
  };
  const read = (field: Field): number | null =>
    (isHeight(field) ? readHeight : readTemperature)(textOf(field), preferences);
  const values = FIELDS.map(read);
  const typedRange = values.every((value) => value !== null)
    ? (Object.fromEntries(FIELDS.map((field, i) => [field, values[i]])) as unknown as RangeGiven)
    : null;
  const range = useSettled(typedRange);
  return (
    <Screen title={words.title} back={{ to: "/drawer", words: all.back }}>
      <p>{words.lead}</p>
      {own !== null && <p class="quiet">{own.ok ? words.own : own.detail}</p>}
      <div class="fields">
        {FIELDS.map((field) => (
          <NumberField
            key={field}
            label={words[LABEL[field]]}
            value={textOf(field)}
            onInput={(text) => setTyped((before) => ({ ...before, [field]: text }))}
            unit={isHeight(field) ? preferences.height : temperatureUnit(preferences)}
            wrong={textOf(field).trim() !== "" && read(field) === null ? words.wrong : null}
          />
        ))}
      </div>
      {range !== null && <Wanted range={range} />}
    </Screen>
  );
}

function Wanted({ range }: { readonly range: RangeGiven }) {
  const all = useWords().drawer;
  const words = all.buyScreen;
  const wanted = useAnswer("jetsWanted", { range });
  if (wanted === null) {
    return (
      <p class="quiet" role="status">
        {words.reckoning}
      </p>
    );
  }
  if (!wanted.ok) {
    return (
      <p class="caution" role="alert">
        {wanted.detail}
      </p>
    );
  }
  const { kinds, leftOut } = wanted.value;
  return (
    <>
      {kinds.map((kind) => (
        <Kind key={`${kind.place} ${kind.numbering} ${kind.maker}`} kind={kind} />
      ))}
      {leftOut.length > 0 && (
        <section>
          <h2>{words.leftOut}</h2>
          <ul class="stack">
            {leftOut.map(({ bike, why }) => (
              <li key={`${bike} ${why}`}>{words.leftOutOne(bike, why)}</li>
            ))}
          </ul>
        </section>
      )}
      <p class="quiet small">{words.rule}</p>
    </>
  );
}

function Kind({ kind: { place, numbering, maker, bikes, buy, outOfReach } }: { readonly kind: KindToBuy }) {
  const all = useWords().drawer;
  const words = all.buyScreen;
  const [preferences] = usePreferences();
  const degrees = (celsius: number) => temperatureText(Math.round(celsius), preferences);
  const where = ({ heightM, celsius }: BoughtFor) =>
    [
      words.range(heightText(heightM.from, preferences), heightText(heightM.to, preferences)),
      words.range(degrees(celsius.from), degrees(celsius.to)),
    ] as const;
  return (
    <section class="stack" aria-live="polite">
      <h2>{words.heading(place)}</h2>
      <p class="quiet small">{words.usedBy(all.kind(numbering, maker), bikes.join(", "))}</p>
      {buy.length === 0 && outOfReach.length === 0 && <p>{words.nothing}</p>}
      <ul class="rows">
        {buy.map(({ number, for: reasons }) => (
          <li key={number} class="trip-stop">
            <h3>{words.jet(place, number)}</h3>
            {reasons.map((reason) => (
              <p key={reason.bike} class="small">
                {words.why(reason.bike, ...where(reason))}
              </p>
            ))}
          </li>
        ))}
      </ul>
      {outOfReach.map((one) => (
        <p key={one.bike} class="caution">
          {words.out(one.bike, ...where(one))}
        </p>
      ))}
    </section>
  );
}
