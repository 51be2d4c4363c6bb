import { useEffect, useRef } from "preact/hooks";
import type { PartCompared } from "../../engine/answers/part-rows.ts";
import type { ChangedSince, RideForm } from "../../engine/answers/ride-form.ts";
import { Choice } from "../../ui/choice.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { useWords } from "../../words/use-words.ts";
import { partName } from "../part-name.ts";
import { comparable, type Felt, type ReportDraft, troubleAt } from "./draft.ts";
import { MoreSigns } from "./more-signs.tsx";
import type { ReportOpening } from "./sign-choices.ts";
import { StopBlock } from "./stop-block.tsx";

interface RestPageProps {
  readonly form: RideForm;
  readonly draft: ReportDraft;
  readonly onChange: (to: (before: ReportDraft) => ReportDraft) => void;
}

/** The questions after the openings: against the setup before, a touch of choke, and the signs of the whole ride. */
export function RestPage({ form, draft, onChange }: RestPageProps) {
  const words = useWords().report;
  const top = useRef<HTMLDivElement>(null);
  useEffect(() => {
    top.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, []);
  const stops = form.more.flatMap(({ signs }) =>
    signs.flatMap(({ id, stop }) => (stop && draft.more[id] === true ? [id] : [])),
  );
  const trouble = troubleAt(draft, form.healthy);
  return (
    <div ref={top} tabIndex={-1} class="stack rest">
      <StopBlock signs={stops} />
      {form.against !== null && <Against against={form.against} draft={draft} onChange={onChange} />}
      <div class="stack">
        <Choice
          label={trouble === null ? words.choke : `${words.choke} (${words.chokeAt(words.at[trouble])})`}
          options={(["worse", "same", "better"] as const).map((value) => ({
            value,
            words: words.chokeAnswers[value],
          }))}
          value={draft.choke}
          onChoose={(choke) => onChange((before) => ({ ...before, choke }))}
        />
        <span class="small quiet">{words.chokeHint}</span>
      </div>
      <div>
        <MoreSigns form={form} draft={draft} onChange={onChange} />
        <details>
          <summary>
            <span>{words.words}</span>
          </summary>
          <TextField
            label={words.words}
            hint={words.wordsHint}
            lines={3}
            value={draft.words}
            onInput={(typed) => onChange((before) => ({ ...before, words: typed }))}
          />
        </details>
      </div>
    </div>
  );
}

interface AgainstProps {
  readonly against: ChangedSince;
  readonly draft: ReportDraft;
  readonly onChange: RestPageProps["onChange"];
}

const FELT: readonly Felt[] = ["worse", "same", "better"];

function Against({ against, draft, onChange }: AgainstProps) {
  const all = useWords();
  const words = all.report;
  const options = FELT.map((value) => ({ value, words: words[value] }));
  const openings = comparable(draft, against.openings);
  const line = ({ part, from, to }: PartCompared) =>
    `${partName(part, all)}: ${all.history.from(from ?? all.fitted.notKnown, to ?? all.fitted.notKnown)}`;
  if (openings.length === 0) return null;
  const first = draft.felt[openings[0]!];
  const everywhere =
    first !== undefined && openings.every((each) => draft.felt[each] === first) ? first : null;
  const set = (which: readonly ReportOpening[], felt: Felt) =>
    onChange((before) => ({
      ...before,
      felt: { ...before.felt, ...Object.fromEntries(which.map((opening) => [opening, felt])) },
    }));
  const row = (label: string, value: Felt | null, which: readonly ReportOpening[]) => (
    <>
      <span>{label}</span>
      <Choice label={label} hideLabel options={options} value={value} onChoose={(felt) => set(which, felt)} />
    </>
  );
  return (
    <section class="stack">
      <h2 class="lead">{words.against}</h2>
      <p class="small quiet">{against.parts.map(line).join(" · ")}</p>
      <div class="verdicts">
        {openings.length > 1 && row(words.everywhere, everywhere, openings)}
        {openings.map((opening) => row(words.at[opening], draft.felt[opening] ?? null, [opening]))}
      </div>
    </section>
  );
}
