import type { Outcome } from "@jetwright/core";
import { useEffect, useState } from "preact/hooks";
import { Link, useLocation } from "wouter-preact";
import { dataOfLink, unpackLines } from "../../carry/setup-link.ts";
import type { PieceRecord } from "../../engine/answers/copy/read-piece.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { TextField } from "../../ui/text-field.tsx";
import { say } from "../../ui/toast.tsx";
import { useRefusal } from "../../words/use-refusal.ts";
import { useWords } from "../../words/use-words.ts";

/** A setup that came as a link: what would come in, and the tap that takes it. Without one, a place to paste it. */
export function TakeScreen({ params }: { readonly params: { readonly data?: string } }) {
  const words = useWords().take;
  const { data } = params;
  return (
    <Screen title={words.title} back={{ to: "/", words: words.back }}>
      {data === undefined ? <PasteLink /> : <Offered key={data} data={data} />}
    </Screen>
  );
}

function PasteLink() {
  const words = useWords().take;
  const [typed, setTyped] = useState("");
  const [, go] = useLocation();
  return (
    <form
      class="stack"
      onSubmit={(event) => {
        event.preventDefault();
        go(`/take/${encodeURIComponent(dataOfLink(typed))}`);
      }}
    >
      <TextField label={words.paste} hint={words.pasteHint} value={typed} onInput={setTyped} lines={4} />
      <button type="submit" class="button main" disabled={typed.trim() === ""}>
        {words.open}
      </button>
    </form>
  );
}

function Offered({ data }: { readonly data: string }) {
  const words = useWords().take;
  const whyNot = useRefusal();
  const [unpacked, setUnpacked] = useState<Outcome<readonly string[]> | null>(null);
  useEffect(() => {
    let current = true;
    void unpackLines(data).then((read) => current && setUnpacked(read));
    return () => {
      current = false;
    };
  }, [data]);
  if (unpacked === null) return <p class="quiet">{words.reading}</p>;
  if (!unpacked.ok) {
    return (
      <p class="warn" role="alert">
        {whyNot(unpacked)}
      </p>
    );
  }
  return <OfferedLines lines={unpacked.value} />;
}

function OfferedLines({ lines }: { readonly lines: readonly string[] }) {
  const words = useWords().take;
  const shop = useShop();
  const [, go] = useLocation();
  const [{ language }] = usePreferences();
  const piece = useAnswer("readPiece", { lines, firstLine: 1, language });
  const bikes = useAnswer("bikes", null);
  if (piece === null || bikes === null) return <p class="quiet">{words.reading}</p>;
  const fresh = piece.records.filter(({ against }) => against === "new");
  const bike = piece.records.find((record) => record.bike !== null)?.bike ?? null;
  const known = bike !== null && bikes.some(({ id }) => id === bike);
  const address = bike === null ? "/" : `/bike/${encodeURIComponent(bike)}`;
  const take = async () => {
    const kept = await shop.take(fresh.map(({ id, line }) => ({ id, line })));
    say(kept.ok ? words.taken : kept.detail);
    if (kept.ok) go(address);
  };
  return (
    <section class="stack">
      {fresh.length === 0 ? (
        <>
          <p>{words.already}</p>
          <Link class="button main" href={address}>
            {words.toBike}
          </Link>
        </>
      ) : (
        <>
          <p>{words.wouldCome}</p>
          <ul class="rows">
            {piece.records.map((record) => (
              <li key={record.id} class="row">
                <span>{record.words}</span>
                <span class="quiet small">{asideOf(record, words)}</span>
              </li>
            ))}
          </ul>
          {piece.unreadable.length > 0 && <p class="caution">{words.unreadable}</p>}
          {known && <p class="quiet">{words.known}</p>}
          <button type="button" class="button main" onClick={() => void take()}>
            {words.takeIn}
          </button>
          <Link class="button plain" href="/">
            {words.leave}
          </Link>
        </>
      )}
    </section>
  );
}

function asideOf(
  { against, reading }: PieceRecord,
  words: { readonly here: string; readonly other: string; readonly kept: string },
): string {
  if (against === "here") return words.here;
  if (against === "other") return words.other;
  return reading === "used" ? "" : words.kept;
}
