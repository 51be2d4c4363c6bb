import { useEffect, useRef } from "preact/hooks";
import type { RideForm } from "../../engine/answers/ride-form.ts";
import { Choice } from "../../ui/choice.tsx";
import { useWords } from "../../words/use-words.ts";
import { markSign, markUnsure, noticedAt, pageAfter, type ReportDraft, seenAt } from "./draft.ts";
import { SignDrawing } from "./drawing.tsx";
import { type ReportOpening, WARNING_SIGNS } from "./sign-choices.ts";
import { SignRow } from "./sign-row.tsx";
import { StopBlock, WarningBlock } from "./stop-block.tsx";

interface OpeningPageProps {
  readonly form: RideForm;
  readonly draft: ReportDraft;
  readonly opening: ReportOpening;
  readonly onChange: (to: (before: ReportDraft) => ReportDraft) => void;
}

/** What it did at one opening. The first answer goes on to the next opening; whoever comes back may add to it. */
export function OpeningPage({ form, draft, opening, onChange }: OpeningPageProps) {
  const words = useWords().report;
  const asked = useRef<HTMLHeadingElement>(null);
  const first = useRef(true);
  useEffect(() => {
    if (!first.current) {
      asked.current?.focus({ preventScroll: true });
      window.scrollTo(0, 0);
    }
    first.current = false;
  }, [opening]);

  const signs = form.openings[opening];
  const noticed = noticedAt(draft, opening);
  const seen = seenAt(draft, opening);
  const stops = signs.filter(({ id, stop }) => stop && noticed[id] === true).map(({ id }) => id);

  const mark = (id: string, there: boolean, halts: boolean) =>
    onChange((before) => {
      const after = markSign(before, opening, id, there);
      const answeredNow = there && seenAt(before, opening).length === 0;
      return answeredNow && !halts ? { ...after, page: pageAfter(opening) } : after;
    });
  const unsure = draft.unsure.includes(opening);

  return (
    <>
      <h2 ref={asked} tabIndex={-1} class="asked">
        {words.ask[opening]}
      </h2>
      {opening === "closed" && (
        <Choice
          label={words.warm}
          hideLabel
          options={[
            { value: "yes", words: words.warmYes },
            { value: "no", words: words.warmNo },
          ]}
          value={draft.warm ? "yes" : "no"}
          onChoose={(value) => onChange((before) => ({ ...before, warm: value === "yes" }))}
        />
      )}
      {opening === "closed" && !draft.warm && <p class="small warn">{words.coldSays}</p>}
      <StopBlock signs={stops} />
      {seen.some((id) => WARNING_SIGNS.includes(id)) && <WarningBlock />}
      <ul class="signs">
        {signs.map((sign) => (
          <SignRow
            key={`${opening} ${sign.id}`}
            sign={sign}
            marked={noticed[sign.id]}
            onMark={(there) => mark(sign.id, there, sign.stop || WARNING_SIGNS.includes(sign.id))}
          />
        ))}
        <li class={unsure ? "sign seen" : "sign"}>
          <button
            type="button"
            class="it"
            aria-pressed={unsure}
            onClick={(event) =>
              event.detail < 2 &&
              onChange((before) => ({
                ...markUnsure(before, opening),
                page: before.unsure.includes(opening) ? opening : pageAfter(opening),
              }))
            }
          >
            <SignDrawing sign={null} />
            <span>
              <strong>{words.unsure}</strong>
              <span class="small quiet">{words.unsureHint}</span>
            </span>
          </button>
        </li>
      </ul>
      <details>
        <summary>{words.apart}</summary>
        <dl class="apart small">
          {signs.map(({ id, words: name, description, notToBeTakenFor }) => (
            <div key={id}>
              <dt>{name}</dt>
              <dd>
                {description} {notToBeTakenFor !== "" && `${words.not} ${notToBeTakenFor}`}
              </dd>
            </div>
          ))}
        </dl>
      </details>
    </>
  );
}
