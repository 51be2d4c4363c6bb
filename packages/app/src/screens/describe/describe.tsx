import { useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import type { BikeView } from "../../engine/answers/bike.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { keepUndoable } from "../fitted/keep-undoable.ts";
import { type DescriptionTyped, descriptionChange, typedDescription } from "./description-change.ts";

/** What the bike is: corrected, or filled in later. */
export function Describe({ params }: { readonly params: { readonly bike: string } }) {
  const words = useWords().describe;
  const view = useAnswer("bike", { bike: params.bike });
  const bikes = useAnswer("bikes", null);
  if (view === null || bikes === null) {
    return (
      <Screen title={words.title} back={{ to: bikeAddress(params.bike), words: params.bike }}>
        {null}
      </Screen>
    );
  }
  const away = bikes.find(({ id }) => id === params.bike)?.away ?? false;
  return <DescriptionForm view={view} away={away} />;
}

function DescriptionForm({ view, away }: { readonly view: BikeView; readonly away: boolean }) {
  const { describe: words, newBike: own, pictures, settings } = useWords();
  const shop = useShop();
  const [preferences] = usePreferences();
  const [, go] = useLocation();
  const bike = view.id;
  const [before] = useState(() => typedDescription(view.description, preferences));
  const [typed, setTyped] = useState(before);
  const [wrong, setWrong] = useState<{ readonly field: string; readonly detail: string } | null>(null);
  const set = (change: Partial<DescriptionTyped>) => {
    setTyped((now) => ({ ...now, ...change }));
    setWrong(null);
  };
  const common = (field: keyof DescriptionTyped, label: string) => ({
    label,
    value: typed[field],
    wrong: wrong?.field === field ? wrong.detail : null,
    onInput: (text: string) => set({ [field]: text }),
  });

  async function keep() {
    const change = descriptionChange(before, typed, preferences, own);
    if (!change.ok) {
      setWrong({ field: change.reason, detail: change.detail });
      say(change.detail);
      return;
    }
    if (change.value === null) {
      say(words.nothing);
      return;
    }
    const kept = await keepUndoable(shop, bike, words, { kind: "bike-described", body: change.value });
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    go(bikeAddress(bike));
    say(words.kept, kept.value);
  }

  async function putAway() {
    const kept = await keepUndoable(shop, bike, words, { kind: "bike-put-away", body: { away: !away } });
    if (!kept.ok) say(kept.detail);
    else say(away ? words.back : words.away, kept.value);
  }

  return (
    <Screen
      title={words.title}
      aside={view.name}
      back={{ to: bikeAddress(bike), words: view.name }}
      bar={
        <button type="button" class="main" onClick={() => void keep()}>
          {words.keep}
        </button>
      }
    >
      <p>{words.intro}</p>
      <TextField {...common("name", own.name)} />
      <Choice
        label={own.strokes}
        value={typed.strokes === "" ? null : typed.strokes}
        options={[
          { value: "2", words: own.two },
          { value: "4", words: own.four },
        ]}
        onChoose={(strokes) => set({ strokes })}
      />
      <Choice
        label={own.cylinders}
        value={typed.cylinders === "" ? null : typed.cylinders}
        options={[
          { value: "1", words: own.oneCylinder },
          { value: "2", words: own.twoCylinders },
        ]}
        onChoose={(cylinders) => set({ cylinders })}
      />
      <NumberField {...common("displacement", own.displacement)} unit="cc" />
      <NumberField {...common("bore", own.bore)} unit="mm" hint={own.boreHint} />
      <Choice
        label={own.numbering}
        down
        value={typed.numbering === "" ? null : typed.numbering}
        options={(["bore", "flow"] as const).map((value) => ({
          value,
          words: own.numberings[value],
          hint: own.numberingHints[value],
        }))}
        onChoose={(numbering) => set({ numbering })}
      />
      <Choice
        label={own.screw}
        down
        value={typed.screw === "" ? null : typed.screw}
        options={(["air", "fuel"] as const).map((value) => ({
          value,
          words: own.screws[value],
          hint: pictures.screw.rule[value],
        }))}
        onChoose={(screw) => set({ screw })}
      />
      <TextField {...common("place", own.place)} />
      <TextField {...common("height", `${own.height} (${preferences.height})`)} hint={settings.otherUnit} />
      <TextField {...common("use", own.use)} hint={own.useHint} />
      <section class="stack">
        <p class="quiet small">{words.putAwayHint}</p>
        <button type="button" class="button plain" onClick={() => void putAway()}>
          {away ? words.backAgain : words.putAway}
        </button>
      </section>
    </Screen>
  );
}
