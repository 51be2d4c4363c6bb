import type { FittedPart } from "@jetwright/records";
import { Link } from "wouter-preact";
import { PhotoThumb } from "../../photos/photo-thumb.tsx";
import { removePhoto } from "../../photos/remove-photo.ts";
import { fittedPhotos } from "../../photos/shown-photo.ts";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/bike.css";
import { BikeBar, bikeAddress } from "../bike/bike-bar.tsx";
import { FittedList } from "../bike/fitted-list.tsx";
import { keepUndoable } from "./keep-undoable.ts";

/** Every part fitted, how it is known, and the way back from the last change. */
export function FittedPage({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().fitted;
  const shop = useShop();
  const [preferences] = usePreferences();
  const view = useAnswer("bike", { bike });
  const fitted = useAnswer("fitted", { bike });
  const photos = fittedPhotos(useAnswer("photos", { bike }) ?? []);
  const photoWords = useWords().photos;
  const before = useAnswer("takeBack", { bike, language: preferences.language });

  async function takeBack() {
    if (!before?.ok) return;
    const kept = await keepUndoable(shop, bike, words, { kind: "setup-fitted", body: before.value.body });
    if (!kept.ok) say(kept.detail);
    else say(words.takenBack, kept.value);
  }

  const thumb = (part: FittedPart) => {
    const shown = photos.get(part);
    if (shown === undefined) return null;
    return (
      <PhotoThumb
        key={part}
        photos={shown}
        onRemove={({ record }) => void removePhoto(shop, bike, record, photoWords)}
      />
    );
  };

  return (
    <Screen
      title={words.title}
      aside={view?.name}
      back={{ to: bikeAddress(bike), words: view?.name ?? bike }}
      bar={<BikeBar bike={bike} here="fitted" />}
    >
      <p>{words.intro}</p>
      {fitted !== null && !fitted.ok && <p>{fitted.detail}</p>}
      {fitted?.ok && <FittedList bike={bike} fitted={fitted.value} all beside={thumb} />}
      {fitted?.ok && (
        <div class="stack">
          <Link class="button" href={bikeAddress(bike, "change")}>
            {words.changeParts}
          </Link>
          <Link class="button plain" href={bikeAddress(bike, "carburetor")}>
            {words.carburetor}
          </Link>
        </div>
      )}
      {before?.ok && (
        <section class="stack">
          <p class="quiet small">
            {words.takeBackWords(
              before.value.changes.map(({ from, to }) => words.move(from, to)).join("; "),
              dayText(before.value.at, preferences),
            )}
          </p>
          <button type="button" class="button" onClick={() => void takeBack()}>
            {words.takeBack}
          </button>
        </section>
      )}
    </Screen>
  );
}
