import { useState } from "preact/hooks";
import { useAnswer, useShop } from "../../store/shop.ts";
import { NumberField, typedNumber } from "../../ui/number-field.tsx";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { NeedleDrawing } from "./needle-drawing.tsx";

interface Row {
  readonly below: string;
  readonly diameter: string;
}

const START: readonly Row[] = [0, 5, 10, 15, 20, 25, 30, 35, 40, 45].map((below) => ({
  below: `${below}`,
  diameter: "",
}));

/** A needle's shape from a micrometer: two columns, a drawing of what they say, and what to measure next. */
export function NeedleScreen() {
  const all = useWords().drawer;
  const words = all.needleScreen;
  const shop = useShop();
  const [marks, setMarks] = useState("");
  const [grooves, setGrooves] = useState("5");
  const [pitch, setPitch] = useState("0.9");
  const [rows, setRows] = useState<readonly Row[]>(START);
  const [wrong, setWrong] = useState<string | null>(null);
  const points = rows.flatMap(({ below, diameter }) => {
    const at = typedNumber(below);
    const thick = typedNumber(diameter);
    return at === null || thick === null ? [] : [{ belowTopGrooveMm: at, diameterMm: thick }];
  });
  const shape = useAnswer("needleShape", { points });
  const change = (index: number, part: Partial<Row>) =>
    setRows((before) => before.map((row, i) => (i === index ? { ...row, ...part } : row)));
  const keep = async () => {
    if (marks.trim() === "") {
      setWrong(words.marksNeeded);
      return;
    }
    const body = {
      marks: marks.trim(),
      ...(typedNumber(grooves) === null ? {} : { grooves: typedNumber(grooves)! }),
      ...(typedNumber(pitch) === null ? {} : { groovePitchMm: typedNumber(pitch)! }),
      points,
    };
    const kept = await shop.keep({ kind: "needle-measured", body });
    say(kept.ok ? words.kept : kept.detail);
    if (kept.ok) window.history.back();
  };
  return (
    <Screen title={words.title} back={{ to: "/drawer", words: all.back }}>
      <p>{words.lead}</p>
      <TextField label={words.marks} value={marks} onInput={setMarks} hint={words.marksHint} wrong={wrong} />
      <NumberField label={words.grooves} value={grooves} onInput={setGrooves} />
      <NumberField label={words.pitch} value={pitch} onInput={setPitch} unit="mm" />
      <table>
        <thead>
          <tr>
            <th scope="col">{words.below}</th>
            <th scope="col">{words.diameter}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, i) => (
            <tr key={i}>
              <td>
                <input
                  class="bare"
                  inputMode="decimal"
                  aria-label={`${words.below} ${i + 1}`}
                  value={row.below}
                  onInput={(event) => change(i, { below: event.currentTarget.value })}
                />
              </td>
              <td>
                <input
                  class="bare"
                  inputMode="decimal"
                  aria-label={`${words.diameter} ${i + 1}`}
                  value={row.diameter}
                  onInput={(event) => change(i, { diameter: event.currentTarget.value })}
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <button type="button" class="button" onClick={() => setRows([...rows, { below: "", diameter: "" }])}>
        {words.another}
      </button>
      <section class="stack" aria-live="polite">
        {points.length > 0 && shape !== null && !shape.ok && <p class="caution">{shape.detail}</p>}
        {points.length > 0 && shape?.ok && (
          <>
            <NeedleDrawing points={points} shape={shape.value} />
            <p>
              <strong>
                {words.straight(shape.value.straightMm.toFixed(3), shape.value.straightSdMm.toFixed(3))}
              </strong>
            </p>
            {shape.value.tapers.length === 0 && <p>{words.noTaper}</p>}
            {shape.value.tapers.map(({ startMm, degrees }, i) => (
              <p key={startMm}>{words.taper(i + 1, startMm.toFixed(1), degrees.toFixed(2))}</p>
            ))}
            {shape.value.doubtful.map(({ belowTopGrooveMm, expectedMm }) => (
              <p key={belowTopGrooveMm} class="caution">
                {words.doubtful(`${belowTopGrooveMm}`, expectedMm.toFixed(3))}
              </p>
            ))}
            {shape.value.remarks.map((remark) => (
              <p key={remark} class="quiet">
                {remark}
              </p>
            ))}
          </>
        )}
      </section>
      <button
        type="button"
        class="button main"
        disabled={!shape?.ok || points.length === 0}
        onClick={() => void keep()}
      >
        {words.keep}
      </button>
    </Screen>
  );
}
