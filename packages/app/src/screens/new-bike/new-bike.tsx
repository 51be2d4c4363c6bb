import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import { temperatureUnit } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import "../../styles/bike.css";
import { bikeAddress } from "../bike/bike-bar.tsx";
import { type BikeDraft, readBikeDraft } from "./bike-draft.ts";
import { type BikeFaults, bikeId, bikeRecords } from "./bike-records.ts";
import { Fold } from "./fold.tsx";

/** A new bike: a few fields, the rest folded, each with what leaving it empty costs. */
export function NewBike() {
  const words = useWords();
  const whyNot = useRefusal();
  const { newBike: own, home } = words;
  const shop = useShop();
  const [preferences] = usePreferences();
  const [, go] = useLocation();
  const stored = useDraft<BikeDraft>(shop.database, "draft:new-bike", readBikeDraft);
  const [faults, setFaults] = useState<BikeFaults>({});
  const [busy, setBusy] = useState(false);
  const draft = stored.value;

  async function keep() {
    if (draft === null || busy) return;
    const made = bikeRecords(draft, preferences, words, whyNot);
    if (!made.ok) {
      setFaults(made.faults);
      say(made.faults.strokes ?? own.look);
      // The first wrong field takes the focus once it is drawn as wrong.
      setTimeout(() => {
        const first = document.querySelector<HTMLElement>('[aria-invalid="true"]');
        if (made.faults.strokes !== undefined) window.scrollTo(0, 0);
        else first?.focus();
      });
      return;
    }
    setBusy(true);
    const chance = [...crypto.getRandomValues(new Uint8Array(2))]
      .map((byte) => byte.toString(16).padStart(2, "0"))
      .join("");
    const bike = bikeId(made.name, chance);
    const kept = await shop.keep(...made.records(bike));
    setBusy(false);
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    stored.clear();
    go(bikeAddress(bike), { replace: true });
    say(own.kept);
  }

  const back = { to: "/", words: home.title };
  if (draft === null)
    return (
      <Screen title={own.title} back={back}>
        {null}
      </Screen>
    );

  const set = (change: Partial<BikeDraft>) => {
    stored.change((before) => ({ ...before, ...change }));
    setFaults((before) => {
      const still = { ...before };
      for (const field of Object.keys(change)) delete still[field as keyof BikeDraft];
      return still;
    });
  };
  const text = (field: keyof BikeDraft, label: string, hint?: string) => (
    <TextField
      label={label}
      hint={hint}
      value={draft[field]}
      wrong={faults[field] ?? null}
      onInput={(typed) => set({ [field]: typed })}
    />
  );
  const number = (field: keyof BikeDraft, label: string, unit?: string, hint?: string) => (
    <NumberField
      label={label}
      hint={hint}
      unit={unit}
      value={draft[field]}
      wrong={faults[field] ?? null}
      onInput={(typed) => set({ [field]: typed })}
    />
  );
  const fold = (
    title: string,
    cost: string,
    fields: readonly (keyof BikeDraft)[],
    inside: ComponentChildren,
  ) => {
    const open = fields.some((field) => draft[field] !== "" || faults[field] !== undefined);
    return (
      <Fold title={title} cost={cost} open={open}>
        {inside}
      </Fold>
    );
  };

  return (
    <Screen
      title={own.title}
      back={back}
      bar={
        <button type="button" class="main" disabled={busy} onClick={() => void keep()}>
          {own.keep}
        </button>
      }
    >
      <p>{own.intro}</p>
      <Choice
        label={own.strokes}
        value={draft.strokes === "" ? null : draft.strokes}
        options={[
          { value: "2", words: own.two },
          { value: "4", words: own.four },
        ]}
        onChoose={(strokes) => set({ strokes })}
      />
      {faults.strokes && <p class="warn">{faults.strokes}</p>}
      <Choice
        label={own.cylinders}
        value={draft.cylinders}
        options={[
          { value: "1", words: own.oneCylinder },
          { value: "2", words: own.twoCylinders },
        ]}
        onChoose={(cylinders) => set({ cylinders })}
      />
      {number("displacement", own.displacement, "cc", own.displacementHint)}
      {number("bore", own.bore, "mm", own.boreHint)}
      {number("pilot", own.pilot, undefined, own.jetHint)}
      {number("main", own.main, undefined, own.jetHint)}
      {draft.pilot === "" && draft.main === "" && <p class="quiet small">{own.unknownJet}</p>}
      <Choice
        label={own.numbering}
        down
        value={draft.numbering === "" ? null : draft.numbering}
        options={(["bore", "flow", "unsure"] as const).map((value) => ({
          value,
          words: own.numberings[value],
          hint: own.numberingHints[value],
        }))}
        onChoose={(numbering) => set({ numbering })}
      />
      <Choice
        label={own.known}
        value={draft.how}
        options={(["read by eye", "measured", "told"] as const).map((value) => ({
          value,
          words: own.knownOptions[value],
        }))}
        onChoose={(how) => set({ how })}
      />
      {text("name", own.name, own.nameHint)}
      <div>
        {fold(
          own.slideFold,
          own.slideCost,
          ["cutaway", "screw", "turns"],
          <>
            {number("cutaway", own.cutaway, "mm", own.cutawayHint)}
            <Choice
              label={own.screw}
              down
              value={draft.screw === "" ? null : draft.screw}
              options={(["air", "fuel", "unsure"] as const).map((value) => ({
                value,
                words: own.screws[value],
                hint: own.screwHints[value],
              }))}
              onChoose={(screw) => set({ screw })}
            />
            {text("turns", own.turns, words.fitted.edit.turnsHint)}
          </>,
        )}
        {fold(
          own.needleFold,
          own.needleCost,
          ["marks", "grooves", "clip", "needleJet"],
          <>
            {text("marks", own.marks, words.fitted.edit.marksHint)}
            {number("grooves", own.grooves)}
            {text("clip", own.clip, words.pictures.clip.rule)}
            {number("needleJet", own.needleJet, "mm")}
          </>,
        )}
        {fold(
          own.placeFold,
          own.placeCost,
          ["place", "height", "temperature"],
          <>
            {text("height", `${own.height} (${preferences.height})`, words.settings.otherUnit)}
            {text("temperature", `${own.temperature} (${temperatureUnit(preferences)})`, own.temperatureHint)}
            {text("place", own.place)}
          </>,
        )}
        {fold(
          own.fuelFold,
          own.fuelCost,
          ["ethanol", "oil"],
          <>
            <Choice
              label={own.ethanol}
              value={draft.ethanol === "" ? null : draft.ethanol}
              options={(["0", "5", "10", "unsure"] as const).map((value) => ({
                value,
                words: own.ethanols[value],
              }))}
              onChoose={(ethanol) => set({ ethanol })}
            />
            {draft.strokes !== "4" && text("oil", own.oil, own.oilHint)}
          </>,
        )}
        {fold(own.useFold, "", ["use"], text("use", own.use, own.useHint))}
      </div>
    </Screen>
  );
}
