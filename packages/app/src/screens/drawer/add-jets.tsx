import { useState } from "preact/hooks";
import { useShop } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { typedJets } from "./typed-numbers.ts";

/** Jets into the drawer, several numbers in one go. */
export function AddJets({
  kinds,
}: {
  readonly kinds: readonly { readonly numbering: "bore" | "flow"; readonly maker: string }[];
}) {
  const words = useWords().drawer;
  const shop = useShop();
  const [part, setPart] = useState<"main" | "pilot">("main");
  const [numbering, setNumbering] = useState<"bore" | "flow">(kinds[0]?.numbering ?? "bore");
  const [maker, setMaker] = useState("");
  const [typed, setTyped] = useState("");
  const [wrong, setWrong] = useState<string | null>(null);
  const keep = async () => {
    const jets = typedJets(typed);
    if (jets === null) {
      setWrong(words.noNumbers);
      return;
    }
    const parts = jets.map((jet) => ({
      part,
      numbering,
      ...(maker.trim() === "" ? {} : { maker: maker.trim() }),
      ...jet,
    }));
    const kept = await shop.keep({ kind: "parts-bought", body: { parts } });
    if (!kept.ok) {
      setWrong(kept.detail);
      return;
    }
    const [record] = kept.value;
    setTyped("");
    setWrong(null);
    say(words.kept(jets.reduce((sum, { count }) => sum + count, 0)), {
      words: words.undo,
      act: () => void shop.keep({ kind: "record-struck", body: { record: record!, why: words.mistaken } }),
    });
  };
  return (
    <details>
      <summary>{words.add}</summary>
      <div class="stack" style="padding:12px 0">
        <Choice
          label={words.place}
          value={part}
          onChoose={setPart}
          options={[
            { value: "main", words: words.mainJet },
            { value: "pilot", words: words.pilotJet },
          ]}
        />
        <Choice
          label={words.numbering}
          down
          value={numbering}
          onChoose={setNumbering}
          options={[
            { value: "bore", words: words.bore },
            { value: "flow", words: words.flow },
          ]}
        />
        <p class="quiet small">{words.numberingHint}</p>
        <TextField label={words.maker} value={maker} onInput={setMaker} hint={words.makerHint} />
        <TextField
          label={words.numbers}
          value={typed}
          onInput={setTyped}
          hint={words.numbersHint}
          wrong={wrong}
        />
        <button type="button" class="button main" onClick={() => void keep()}>
          {words.keep}
        </button>
      </div>
    </details>
  );
}
