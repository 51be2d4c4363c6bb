import type { JsonObject } from "@jetwright/records";
import type { RefObject } from "preact";
import { useState } from "preact/hooks";
import type { JetKind } from "../../engine/answers/drawer/drawer-view.ts";
import { useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { typedJets } from "./typed-numbers.ts";

interface AddPartsProps {
  readonly kinds: readonly JetKind[];
  /** The form, folded, for who unfolds it from elsewhere on the screen. */
  readonly form: RefObject<HTMLDetailsElement>;
}

/** Parts into the drawer: jets by several numbers in one go, or a needle. */
export function AddParts({ kinds, form }: AddPartsProps) {
  const words = useWords().drawer;
  const whyNot = useRefusal();
  const shop = useShop();
  const [what, setWhat] = useState<"main" | "pilot" | "needle">("main");
  const [chosen, setChosen] = useState<"bore" | "flow" | null>(null);
  const [maker, setMaker] = useState("");
  const [typed, setTyped] = useState("");
  const [how, setHow] = useState<"parts-bought" | "parts-counted">("parts-bought");
  const [wrong, setWrong] = useState<string | null>(null);
  const numbering = chosen ?? kinds[0]?.numbering ?? "bore";
  const { jets, wrong: unread } = typedJets(typed);
  const input = (text: string) => {
    setTyped(text);
    setWrong(null);
  };
  const parts = (): readonly JsonObject[] | string => {
    if (what === "needle") {
      return typed.trim() === ""
        ? words.needleMarksNeeded
        : [{ part: "needle", marks: typed.trim(), count: 1 }];
    }
    if (unread !== null) return whyNot(unread);
    if (jets.length === 0) return words.noNumbers;
    const kind = { numbering, ...(maker.trim() === "" ? {} : { maker: maker.trim() }) };
    return jets.map((jet) => ({ part: what, ...kind, ...jet }));
  };
  const keep = async () => {
    const made = parts();
    if (typeof made === "string") {
      setWrong(made);
      return;
    }
    const kept = await shop.keep({ kind: how, body: { parts: [...made] } });
    if (!kept.ok) {
      setWrong(kept.detail);
      return;
    }
    const record = kept.value[0]!;
    input("");
    say(words.kept(made.reduce((sum, { count }) => sum + Number(count), 0)), {
      words: words.undo,
      act: () => void shop.keep({ kind: "record-struck", body: { record, why: words.mistaken } }),
    });
  };
  return (
    <details ref={form}>
      <summary>{words.add}</summary>
      <div class="stack drawer-add">
        <Choice
          label={words.what}
          value={what}
          onChoose={(next) => {
            setWhat(next);
            setWrong(null);
          }}
          options={[
            { value: "main", words: words.mainJet },
            { value: "pilot", words: words.pilotJet },
            { value: "needle", words: words.oneNeedle },
          ]}
        />
        {what === "needle" ? (
          <TextField label={words.needleMarks} value={typed} onInput={input} wrong={wrong} />
        ) : (
          <>
            <TextField
              label={words.numbers}
              value={typed}
              onInput={input}
              hint={
                jets.length > 0
                  ? words.read(jets.map(({ number, count }) => words.readOne(number, count)).join(", "))
                  : words.numbersHint
              }
              wrong={wrong}
            />
            <Choice
              label={words.numbering}
              value={numbering}
              onChoose={setChosen}
              options={[
                { value: "bore", words: words.bore },
                { value: "flow", words: words.flow },
              ]}
            />
            <p class="quiet small">{words.numberingHint}</p>
            <TextField label={words.maker} value={maker} onInput={setMaker} hint={words.makerHint} />
          </>
        )}
        <Choice
          label={words.how}
          value={how}
          onChoose={setHow}
          down
          options={[
            { value: "parts-bought", words: words.bought },
            { value: "parts-counted", words: words.counted },
          ]}
        />
        <button type="button" class="button main" onClick={() => void keep()}>
          {words.keep}
        </button>
      </div>
    </details>
  );
}
