import { Link, useLocation } from "wouter-preact";
import type { RideForm } from "../../engine/answers/ride-form.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { useDraft } from "../../store/use-draft.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";
import "../../styles/report.css";
import { isEmpty, NEW_DRAFT, pageAfter, pageBefore, type ReportDraft } from "./draft.ts";
import { useReady } from "./keep-report.ts";
import { OpeningPage } from "./opening-page.tsx";
import { OpeningTabs } from "./opening-tabs.tsx";
import { readDraft } from "./read-draft.ts";
import { RestPage } from "./rest-page.tsx";
import { ASKED_OPENINGS, REPORT_OPENINGS } from "./sign-choices.ts";

const NO_SIGNS: readonly string[] = [];

/** A ride told in taps: one page an opening, one for the rest. Never asks what it means. */
export const Report = ({ params }: { readonly params: { readonly bike: string } }) => (
  <Pages key={params.bike} bike={params.bike} />
);

function Pages({ bike }: { readonly bike: string }) {
  const whyNot = useRefusal();
  const words = useWords().report;
  const shop = useShop();
  const [, go] = useLocation();
  const answer = useAnswer("rideForm", { bike });
  const form = answer?.ok ? answer.value : null;
  const key = `draft:${bike}`;
  const stored = useDraft<ReportDraft>(shop.database, key, async (value) => {
    const draft = readDraft(value);
    if (draft.record === null) return draft;
    // Kept already, and the app was closed before it could forget the draft.
    const kept = await shop.store.some([draft.record]).catch(() => []);
    return kept.length === 0 ? draft : NEW_DRAFT;
  });
  const draft = stored.value;
  const keeping = useReady(
    shop,
    bike,
    draft,
    form?.healthy ?? NO_SIGNS,
    form !== null && (draft?.page === "rest" || hasStop(form, draft)),
    (record) => stored.change((before) => ({ ...before, record })),
  );
  const bikePage = `/bike/${encodeURIComponent(bike)}`;

  async function keep() {
    if (draft === null) return;
    const record = keeping.ready();
    const kept = await keeping.take(record);
    if (kept === null) return;
    if (!kept.ok) {
      say(kept.detail);
      return;
    }
    go(bikePage);
    stored.clear();
    say(words.kept, {
      words: words.undo,
      act: () => {
        const back = { ...draft, record: null };
        void shop.database.settings.put({ key, value: back }).catch(() => undefined);
        void shop
          .keep({ kind: "record-struck", bike, body: { record: record.id } })
          .then((struck) => say(struck.ok ? words.undone : struck.detail));
      },
    });
  }

  if (draft === null || form === null) {
    return (
      <Screen title={words.title} back={{ to: bikePage, words: words.back }}>
        <p class="quiet">{answer?.ok === false ? whyNot(answer) : "…"}</p>
      </Screen>
    );
  }
  const { page } = draft;
  const before = pageBefore(page);
  const after = pageAfter(page);
  const turn = (to: ReportDraft["page"]) => stored.change((now) => ({ ...now, page: to }));
  const asked = page === "rest" ? null : ASKED_OPENINGS.indexOf(page) + 1 || null;
  const empty = isEmpty(draft);
  const mayKeep = page === "rest" || hasStop(form, draft);
  const bar = (
    <>
      {before === null ? (
        <Link href={bikePage}>{words.back}</Link>
      ) : (
        <button type="button" onClick={() => turn(before)}>
          {words.back}
        </button>
      )}
      {page !== "rest" && page !== REPORT_OPENINGS.at(-1) && !empty && !mayKeep && (
        <button type="button" onClick={() => turn("rest")}>
          {words.finish}
        </button>
      )}
      {mayKeep ? (
        <button type="button" class="main" disabled={empty || keeping.busy} onClick={() => void keep()}>
          {keeping.busy ? words.keeping : words.keep}
        </button>
      ) : (
        <button type="button" class="main" onClick={() => turn(after)}>
          {after === "rest" ? words.finish : words.next(words.at[after])}
        </button>
      )}
    </>
  );
  return (
    <Screen
      title={page === "rest" ? words.restTitle : words.title}
      aside={asked === null ? form.name : words.of(asked, ASKED_OPENINGS.length)}
      bar={bar}
    >
      <OpeningTabs draft={draft} onGo={turn} />
      {page === "rest" ? (
        <>
          <RestPage form={form} draft={draft} onChange={stored.change} />
          {empty && <p class="quiet">{words.nothing}</p>}
        </>
      ) : (
        <OpeningPage form={form} draft={draft} opening={page} onChange={stored.change} />
      )}
    </Screen>
  );
}

/** A sign that ends the ride was tapped: the report may be kept at once. */
function hasStop(form: RideForm, draft: ReportDraft | null): boolean {
  if (draft === null) return false;
  return REPORT_OPENINGS.some((opening) =>
    form.openings[opening].some(({ id, stop }) => stop && draft.noticed[opening]?.[id] === true),
  );
}
