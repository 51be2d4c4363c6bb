import type { JsonObject } from "@jetwright/records";
import { useEffect, useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import type { NeedleShape } from "../../engine/answers/drawer/needle-shape.ts";
import { useFigure } from "../../preferences/use-figure.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { NumberField, typedNumber } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { NEW_NEEDLE, type NeedleDraft, type ReadingRow, readNeedleDraft, readRows } from "./needle-draft.ts";
import { NeedleDrawing } from "./needle-drawing.tsx";
import "../../styles/air.css";
import "../../styles/drawer.css";

const DRAFT = "needle-draft";

/** A needle's shape from a micrometer: two columns, a drawing of what they say, and what to measure next. */
export function NeedleScreen() {
  const whyNot = useRefusal();
  const all = useWords().drawer;
  const words = all.needleScreen;
  const shop = useShop();
  const [, go] = useLocation();
  const bikes = useAnswer("bikes", null);
  const [draft, setDraft] = useState<NeedleDraft>(NEW_NEEDLE);
  const [wrong, setWrong] = useState<string | null>(null);
  const { settings } = shop.database;
  useEffect(() => {
    settings.get(DRAFT).then(
      (kept) => kept !== undefined && setDraft(readNeedleDraft(kept.value)),
      () => undefined,
    );
  }, [settings]);
  const put = (next: NeedleDraft) => {
    setDraft(next);
    setWrong(null);
    settings.put({ key: DRAFT, value: next }).catch(() => undefined);
  };
  const set = (change: Partial<NeedleDraft>) => put({ ...draft, ...change });
  const change = (index: number, part: Partial<ReadingRow>) =>
    set({ rows: draft.rows.map((row, i) => (i === index ? { ...row, ...part } : row)) });
  const clear = () => {
    const before = draft;
    put(NEW_NEEDLE);
    say(words.cleared, { words: all.undo, act: () => put(before) });
  };

  const { points, unread } = readRows(draft.rows);
  const shape = useAnswer("needleShape", { points });
  const found = points.length > 0 && shape?.ok ? shape.value : null;
  const keep = async () => {
    const marks = draft.marks.trim();
    if (marks === "") {
      setWrong(words.marksNeeded);
      return;
    }
    const [grooves, pitch] = [typedNumber(draft.grooves), typedNumber(draft.pitch)];
    const body = {
      marks,
      ...(grooves === null ? {} : { grooves }),
      ...(pitch === null ? {} : { groovePitchMm: pitch }),
      points: points as unknown as JsonObject[],
    };
    const where = draft.bike === "" ? {} : { bike: draft.bike };
    const kept = await shop.keep({ kind: "needle-measured", ...where, body });
    if (!kept.ok) {
      setWrong(kept.detail);
      return;
    }
    const record = kept.value[0]!;
    put(NEW_NEEDLE);
    say(words.kept, {
      words: all.undo,
      act: () => void shop.keep({ kind: "record-struck", ...where, body: { record, why: all.mistaken } }),
    });
    go("/drawer");
  };
  const whose = (bikes ?? []).filter(({ away }) => !away);
  return (
    <Screen title={words.title} back={{ to: "/drawer", words: all.back }}>
      <p>{words.lead}</p>
      <table class="needle-readings">
        <thead>
          <tr>
            <th scope="col">{words.below}</th>
            <th scope="col">{words.diameter}</th>
          </tr>
        </thead>
        <tbody>
          {draft.rows.map((row, i) => (
            <tr key={i}>
              {(["below", "diameter"] as const).map((column) => (
                <td key={column}>
                  <input
                    class="bare"
                    inputMode="decimal"
                    autocomplete="off"
                    aria-label={`${words[column]} ${i + 1}`}
                    aria-invalid={unread.includes(i + 1) ? true : undefined}
                    value={row[column]}
                    onInput={(event) => change(i, { [column]: event.currentTarget.value })}
                  />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <button
        type="button"
        class="button"
        onClick={() => set({ rows: [...draft.rows, { below: "", diameter: "" }] })}
      >
        {words.another}
      </button>
      <section class="stack" aria-live="polite">
        {unread.length > 0 && <p class="caution">{words.unread(unread.join(", "))}</p>}
        {points.length > 0 && <NeedleDrawing points={points} shape={found} />}
        {points.length > 0 && shape !== null && !shape.ok && <p class="caution">{whyNot(shape)}</p>}
        {found !== null && <Shape shape={found} />}
      </section>
      <TextField
        label={words.marks}
        value={draft.marks}
        onInput={(marks) => set({ marks })}
        hint={words.marksHint}
        wrong={wrong}
      />
      <div class="fields">
        <NumberField
          label={words.grooves}
          value={draft.grooves}
          onInput={(grooves) => set({ grooves })}
          placeholder="5"
        />
        <NumberField
          label={words.pitch}
          value={draft.pitch}
          onInput={(pitch) => set({ pitch })}
          unit="mm"
          placeholder="0.9"
        />
      </div>
      {whose.length > 0 && (
        <Choice
          label={words.whose}
          down
          value={draft.bike}
          onChoose={(bike) => set({ bike })}
          options={[
            { value: "", words: words.anyBike },
            ...whose.map(({ id, name }) => ({ value: id, words: name })),
          ]}
        />
      )}
      <button type="button" class="button main" disabled={found === null} onClick={() => void keep()}>
        {words.keep}
      </button>
      <p class="quiet small">{words.draft}</p>
      <button type="button" class="button plain" onClick={clear}>
        {words.clear}
      </button>
    </Screen>
  );
}

function Shape({ shape }: { readonly shape: NeedleShape }) {
  const words = useWords().drawer.needleScreen;
  const figure = useFigure();
  return (
    <>
      <h2>{words.shape}</h2>
      <p>{words.straight(figure(shape.straightMm, 3), figure(shape.straightSdMm, 3))}</p>
      {shape.tapers.map(({ startMm, startSdMm, degrees }, i) => (
        <p key={startMm}>
          {words.taper(i + 1, figure(startMm, 1), figure(startSdMm, 1), figure(degrees, 2))}
        </p>
      ))}
      {shape.remarks.map((remark) => (
        <p key={remark} class="caution">
          {remark}
        </p>
      ))}
    </>
  );
}
