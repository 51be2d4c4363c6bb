import { useId, useState } from "preact/hooks";
import type { ComparedAt } from "../../engine/answers/compared.ts";
import type { HistorySetup } from "../../engine/answers/history.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Choice } from "../../ui/choice.tsx";
import { dayText } from "../../words/dates.ts";
import type { Words } from "../../words/en.ts";
import { figure as figureOf } from "../../words/figures.ts";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { partName } from "../part-name.ts";

interface CompareTwoProps {
  readonly bike: string;
  /** Oldest first, two at least. */
  readonly setups: readonly HistorySetup[];
}

/** Any two setups of a bike against one another, in words and as a table. */
export function CompareTwo({ bike, setups }: CompareTwoProps) {
  const words = useWords().history;
  const [from, setFrom] = useState(setups[setups.length - 2]!.record);
  const [to, setTo] = useState(setups[setups.length - 1]!.record);
  const [air, setAir] = useState<"same" | "each">("same");
  return (
    <details>
      <summary>{words.compare}</summary>
      <div class="stack history-inside">
        <SetupPicker label={words.first} setups={setups} value={from} onPick={setFrom} />
        <SetupPicker label={words.second} setups={setups} value={to} onPick={setTo} />
        <Choice
          label={words.air}
          value={air}
          onChoose={setAir}
          options={[
            { value: "same", words: words.sameAir, hint: words.sameAirHint },
            { value: "each", words: words.eachAir, hint: words.eachAirHint },
          ]}
        />
        <ComparedTable bike={bike} from={from} to={to} air={air} />
      </div>
    </details>
  );
}

interface SetupPickerProps {
  readonly label: string;
  readonly setups: readonly HistorySetup[];
  readonly value: string;
  readonly onPick: (record: string) => void;
}

function SetupPicker({ label, setups, value, onPick }: SetupPickerProps) {
  const words = useWords().history;
  const [{ language }] = usePreferences();
  const id = useId();
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onPick(event.currentTarget.value)}>
        {setups.map((setup) => (
          <option key={setup.record} value={setup.record}>
            {words.setup(
              [setup.at === null ? words.asFound : dayText(setup.at, language), setup.now && words.now]
                .filter(Boolean)
                .join(", "),
              setup.words,
            )}
          </option>
        ))}
      </select>
    </div>
  );
}

interface ComparedTableProps {
  readonly bike: string;
  readonly from: string;
  readonly to: string;
  readonly air: "same" | "each";
}

function ComparedTable(given: ComparedTableProps) {
  const whyNot = useRefusal();
  const all = useWords();
  const words = all.history;
  const [{ language }] = usePreferences();
  const figure = (percent: number) => figureOf(Math.abs(percent), 1, language);
  const compared = useAnswer("compared", given);
  if (compared === null) return null;
  if (!compared.ok) return <p>{whyNot(compared)}</p>;
  const { at, changes, notes } = compared.value;
  return (
    <div class="stack" aria-live="polite">
      <p>
        <b>{overall(at, all, figure)}</b>
      </p>
      <ul>
        {changes.map(({ part, from, to }) => (
          <li key={part}>
            {partName(part, all)}: {words.from(from ?? all.fitted.notKnown, to ?? all.fitted.notKnown)}
          </li>
        ))}
      </ul>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.opening}</th>
            <th scope="col">{words.mixture}</th>
            <th scope="col">{words.by}</th>
          </tr>
        </thead>
        <tbody>
          {at.map(({ opening, percent, by }) => (
            <tr key={opening}>
              <th scope="row">{all.pictures.opening[opening] ?? opening}</th>
              <td class={Math.abs(percent) < HARDLY ? undefined : percent > 0 ? "rich" : "lean"}>
                {said(percent, words, figure)}
              </td>
              <td>{by === null || Math.abs(percent) < HARDLY ? "" : words.circuits[by]}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {notes.map((note) => (
        <p key={note} class="quiet small">
          {note}
        </p>
      ))}
    </div>
  );
}

/** Percent below which nobody could tell. */
const HARDLY = 0.2;

type Figure = (percent: number) => string;

const said = (percent: number, words: Words["history"], figure: Figure): string =>
  Math.abs(percent) < HARDLY
    ? words.same
    : percent > 0
      ? words.richer(figure(percent))
      : words.leaner(figure(percent));

/** The comparison in one sentence. */
function overall(at: readonly ComparedAt[], { history: words, bike }: Words, figure: Figure): string {
  const where = ({ opening }: ComparedAt) => bike.stretch(opening, opening);
  const most = at.reduce((a, b) => (b.percent > a.percent ? b : a));
  const least = at.reduce((a, b) => (b.percent < a.percent ? b : a));
  const [rich, lean] = [most.percent >= HARDLY, least.percent <= -HARDLY];
  if (rich && lean) return words.overall.both(where(most), where(least));
  if (rich) return words.overall.richer(where(most), figure(most.percent));
  if (lean) return words.overall.leaner(where(least), figure(least.percent));
  return words.alike;
}
