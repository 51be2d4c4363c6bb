import { useState } from "preact/hooks";
import "../../styles/history.css";
import type { HistoryLine } from "../../engine/answers/history.ts";
import type { BikePhoto } from "../../engine/answers/photos/photos-of.ts";
import { PhotoThumb } from "../../photos/photo-thumb.tsx";
import { removePhoto } from "../../photos/remove-photo.ts";
import { BikeTrend } from "../../pictures/bike-trend.tsx";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { clockText, dayText } from "../../words/dates.ts";
import { useWords } from "../../words/use-words.ts";
import { CompareTwo } from "./compare-two.tsx";
import { TakeBackCard } from "./take-back-card.tsx";

/** Lines drawn at first, and with every tap for more. */
const PAGE = 40;

/** Every record of a bike, newest first; the way back, and any two setups side by side. */
export function HistoryScreen({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().history;
  const [{ language }] = usePreferences();
  const history = useAnswer("history", { bike, language });
  const photos = new Map(useAnswer("photos", { bike })?.map((photo) => [photo.record, photo]));
  const [shown, setShown] = useState(PAGE);
  return (
    <Screen
      title={words.title}
      aside={history?.name}
      back={{ to: `/bike/${encodeURIComponent(bike)}`, words: words.back }}
      wide
    >
      {history === null ? (
        <p class="quiet">…</p>
      ) : (
        <div class="columns stack apart">
          <section class="stack">
            <TakeBackCard bike={bike} />
            <BikeTrend bike={bike} />
            {history.setups.length > 1 && <CompareTwo bike={bike} setups={history.setups} />}
          </section>
          <section class="stack">
            <h2>{words.everything}</h2>
            <ol class="story">
              {history.lines.slice(0, shown).map((line, i) => (
                <StoryLine
                  key={line.id}
                  bike={bike}
                  line={line}
                  photo={photos.get(line.id) ?? null}
                  newDay={dayText(line.at, language) !== dayText(history.lines[i - 1]?.at ?? -1, language)}
                />
              ))}
            </ol>
            {history.lines.length > shown && (
              <button type="button" class="button plain" onClick={() => setShown(shown + PAGE)}>
                {words.older(Math.min(PAGE, history.lines.length - shown))}
              </button>
            )}
          </section>
        </div>
      )}
      {history?.lines.length === 0 && <p>{words.nothing}</p>}
    </Screen>
  );
}

interface StoryLineProps {
  readonly bike: string;
  readonly line: HistoryLine;
  /** The picture that the line is about. */
  readonly photo: BikePhoto | null;
  readonly newDay: boolean;
}

function StoryLine({ bike, line, photo, newDay }: StoryLineProps) {
  const photoWords = useWords().photos;
  const words = useWords().history;
  const shop = useShop();
  const [{ language }] = usePreferences();
  const strike = async () => {
    const kept = await shop.keep({ kind: "record-struck", bike, body: { record: line.id } });
    if (!kept.ok) return say(kept.detail);
    const [strikeId] = kept.value;
    say(words.wasStruck, { words: words.undo, act: () => void countAgain(strikeId!) });
  };
  const countAgain = async (strikeId: string) => {
    const kept = await shop.keep({
      kind: "record-struck",
      bike,
      body: { record: strikeId, why: words.undoneWhy },
    });
    say(kept.ok ? words.counts : kept.detail);
  };
  const aside = [
    clockText(line.at, language),
    line.by !== null && words.by_(line.by),
    line.shop && words.wholeShop,
    !line.used && words.notUsed,
  ];
  return (
    <>
      {newDay && (
        <li class="story-day">
          <h3>{dayText(line.at, language)}</h3>
        </li>
      )}
      <li class={line.struck === null ? "story-line" : "story-line struck"}>
        <div>
          <p>{line.struck === null ? line.words : <s>{line.words}</s>}</p>
          <p class="quiet small">
            {[
              ...aside,
              line.struck !== null &&
                (line.struck.why === null ? words.struck : words.struckWhy(line.struck.why)),
            ]
              .filter(Boolean)
              .join(" · ")}
          </p>
        </div>
        {photo !== null && (
          <PhotoThumb
            photos={[photo]}
            onRemove={({ record }) => void removePhoto(shop, bike, record, photoWords)}
          />
        )}
        {line.kind === "record-struck" ? null : line.struck !== null ? (
          <button type="button" class="button plain" onClick={() => void countAgain(line.struck!.id)}>
            {words.unstrike}
          </button>
        ) : (
          <button
            type="button"
            class="button plain"
            aria-label={words.strikeThis(line.words)}
            onClick={() => void strike()}
          >
            {words.strike}
          </button>
        )}
      </li>
    </>
  );
}
