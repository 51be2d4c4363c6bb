import type { LabourPart } from "@jetwright/core";
import { useEffect, useState } from "preact/hooks";
import { useLocation } from "wouter-preact";
import { useAnswer, useShop } from "../../store/shop.ts";
import "../../styles/cards.css";
import "../../styles/change.css";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";
import {
  type ChangeDraft,
  type DraftPhoto,
  isSameWork,
  isUntouched,
  newDraft,
  pagesOf,
  RUNAWAY_READ,
  readyTicks,
  SNAP_TICKS,
  screwSide,
  stillOpen,
  togetherTicks,
} from "./change-draft.ts";
import { ChooseParts } from "./choose-parts.tsx";
import { cameOut, fittedRecords, photoRecord, wentIn } from "./fitted-records.ts";
import { PartPage } from "./part-page.tsx";
import { Ready } from "./ready.tsx";
import { RunawayCard } from "./runaway-card.tsx";
import { Ticks } from "./ticks.tsx";
import { useChangeDraft } from "./use-draft.ts";

interface ChangeProps {
  readonly params: { readonly bike: string; readonly index?: string };
}

/** Carries out a change of parts: made safe, part by part, back together, ready for the first start. */
export function Change({ params }: ChangeProps) {
  const { bike } = params;
  const words = useWords().change;
  const step = params.index !== undefined && /^\d{1,3}$/.test(params.index) ? Number(params.index) : null;
  const plan = useAnswer("change", { bike, step });
  const { draft, setDraft, amend } = useChangeDraft(bike);
  const [goOn, setGoOn] = useState(false);
  const fresh = plan?.ok === true && draft !== undefined && (draft === null || isUntouched(draft));
  const renew = fresh && plan.ok && (draft === null || !isSameWork(draft, plan.value));
  useEffect(() => {
    if (renew && plan?.ok) setDraft(newDraft(plan.value));
  }, [renew]);
  const back = {
    to: bikeAddress(bike, step === null ? "" : `next/${step}`),
    words: step === null ? words.backToBike : words.back,
  };
  if (plan !== null && !plan.ok) {
    return (
      <Screen title={words.title} back={back}>
        <p>{plan.detail}</p>
      </Screen>
    );
  }
  if (plan === null || draft === undefined || draft === null || renew) {
    return (
      <Screen title={words.title} back={back}>
        <p class="quiet">{words.loading}</p>
      </Screen>
    );
  }
  // The advice may have moved on while the work was under way: the work goes on as begun, or starts anew.
  if (draft.plan.title !== plan.value.title && !goOn) {
    return (
      <Screen title={words.goOnTitle} back={back}>
        <p>{draft.plan.title ?? draft.chosen.map((part) => words.part(part, screwSide(draft))).join(", ")}</p>
        <button type="button" class="button main" onClick={() => setGoOn(true)}>
          {words.goOn}
        </button>
        <button type="button" class="button" onClick={() => setDraft(newDraft(plan.value))}>
          {words.startAnew}
        </button>
      </Screen>
    );
  }
  return <ChangeWork bike={bike} step={step} draft={draft} onChange={setDraft} onAmend={amend} back={back} />;
}

interface ChangeWorkProps {
  readonly bike: string;
  readonly step: number | null;
  readonly draft: ChangeDraft;
  readonly onChange: (draft: ChangeDraft | null) => void;
  readonly onAmend: (to: (draft: ChangeDraft) => ChangeDraft) => boolean;
  readonly back: { readonly to: string; readonly words: string };
}

type Wrong = { readonly side: "came" | "went"; readonly field: string; readonly detail: string };

function ChangeWork({ bike, step, draft, onChange, onAmend, back }: ChangeWorkProps) {
  const words = useWords().change;
  const photoWords = useWords().photos;
  const whyNot = useRefusal();
  const edit = { ...useWords().fitted.edit, needed: words.needed, whyNot };
  const shop = useShop();
  const [, go] = useLocation();
  const anatomy = useAnswer("anatomy", { bike, step });
  const [wrong, setWrong] = useState<Wrong | null>(null);
  const pages = pagesOf(draft);
  const at = Math.max(0, pages.indexOf(draft.page));
  const page = pages[at]!;
  const last = at === pages.length - 1;
  const part = page.startsWith("part:") ? (page.slice("part:".length) as LabourPart) : null;

  const change = (next: ChangeDraft) => {
    setWrong(null);
    onChange(next);
  };
  const tick = (ticked: readonly string[]) => change({ ...draft, ticked });

  /** Says what is still open on this page; true when nothing is. */
  function isDone(): boolean {
    if (page === "choose" && draft.chosen.length === 0) {
      say(words.chooseOne);
      return false;
    }
    if (part !== null) {
      const out = cameOut(draft, part, edit);
      if (!out.ok) return refuse("came", out);
      const into = wentIn(draft, part, edit);
      if (!into.ok) return refuse("went", into);
    }
    const [first, ...more] = stillOpen(draft, page);
    if (first === undefined) return true;
    say(words.stillOpen(words.tick[first] ?? first, more.length));
    return false;
  }

  function refuse(
    side: Wrong["side"],
    { reason, detail }: { readonly reason: string; readonly detail: string },
  ) {
    setWrong({ side, field: reason, detail });
    say(detail);
    return false;
  }

  /** A picture may be ready only after the change was written down: then it gets its record by itself. */
  function addPhoto(photo: DraftPhoto): void {
    if (onAmend((now) => ({ ...now, photos: [photo, ...now.photos] }))) say(photoWords.kept);
    else
      void shop
        .keep(photoRecord(photo, bike, Date.now()))
        .then((kept) => say(kept.ok ? photoWords.kept : kept.detail));
  }

  function removePhoto(photo: DraftPhoto): void {
    onAmend((now) => ({ ...now, photos: now.photos.filter((one) => one !== photo) }));
    say(photoWords.removed, { words: photoWords.undo, act: () => addPhoto(photo) });
  }

  async function keep(): Promise<void> {
    const records = fittedRecords(draft, bike, Date.now(), edit);
    if (!records.ok) {
      onChange({ ...draft, page: `part:${records.part}` });
      say(records.detail);
      return;
    }
    const kept = await shop.keep(...records.value);
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    onChange(null);
    go(bikeAddress(bike));
    const what = draft.plan.title ?? draft.chosen.map((one) => words.part(one, screwSide(draft))).join(", ");
    say(words.kept(what), {
      words: words.undo,
      act: () => {
        const strikes = kept.value.map(
          (record) => ({ kind: "record-struck", bike, body: { record } }) as const,
        );
        void shop.keep(...strikes).then((struck) => say(struck.ok ? words.undone : struck.detail));
      },
    });
  }

  const turn = (by: 1 | -1) => {
    if (by === 1 && !isDone()) return;
    if (by === 1 && last) {
      void keep();
      return;
    }
    change({ ...draft, page: pages[at + by]! });
  };

  const title =
    part !== null
      ? words.part(part, screwSide(draft))
      : page === "choose"
        ? words.chooseTitle
        : page === "ready"
          ? words.readyTitle
          : page === "together"
            ? words.togetherTitle
            : words.startTitle;
  return (
    <Screen
      title={title}
      aside={`${at + 1} / ${pages.length}`}
      back={back}
      bar={
        <>
          <button type="button" disabled={at === 0} onClick={() => turn(-1)}>
            {words.previous}
          </button>
          <button type="button" class="main" onClick={() => turn(1)}>
            {last ? words.fitted : words.next}
          </button>
        </>
      }
    >
      {page === "choose" && <ChooseParts draft={draft} onChange={change} />}
      {page === "ready" && (
        <>
          <Ready draft={draft} />
          <Ticks ids={readyTicks(draft)} ticked={draft.ticked} onTick={tick} />
        </>
      )}
      {part !== null && (
        <PartPage
          key={part}
          part={part}
          draft={draft}
          anatomies={anatomy?.ok ? anatomy.value : null}
          wrong={wrong}
          onChange={change}
          onPhoto={addPhoto}
          onRemovePhoto={removePhoto}
        />
      )}
      {page === "together" && <Ticks ids={togetherTicks(draft)} ticked={draft.ticked} onTick={tick} />}
      {page === "start" && (
        <>
          <p>{words.snap}</p>
          <Ticks ids={SNAP_TICKS} ticked={draft.ticked} onTick={tick} />
          <p class="caution">{words.snapNot}</p>
          <RunawayCard
            read={draft.ticked.includes(RUNAWAY_READ)}
            onRead={() => tick([...draft.ticked.filter((id) => id !== RUNAWAY_READ), RUNAWAY_READ])}
          />
          <h2>{words.afterStart}</h2>
          <ol class="steps">
            {words.afterStartSteps.map((one) => (
              <li key={one}>{one}</li>
            ))}
          </ol>
        </>
      )}
    </Screen>
  );
}
