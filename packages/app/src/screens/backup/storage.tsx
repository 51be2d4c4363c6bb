import { useEffect, useState } from "preact/hooks";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { askForLasting, bytesText, type StorageState, storageState } from "./storage-state.ts";

/** Bytes free below which it is said. */
const LITTLE = 50_000_000;

/** What the browser does with what it keeps, in plain words. */
export function Storage() {
  const words = useWords().backup;
  const { stored } = useWords().photos;
  const [{ language }] = usePreferences();
  const [state, setState] = useState<StorageState | null>(null);
  const shelf = useShop().database.photos;
  const [photos, setPhotos] = useState<readonly { readonly bytes: number }[]>([]);
  useEffect(() => {
    void storageState().then(setState);
    shelf.held().then(setPhotos, () => undefined);
  }, [shelf]);
  const ask = async () => {
    const agreed = await askForLasting();
    say(agreed ? words.askedYes : words.askedNo);
    setState(await storageState());
  };
  return (
    <>
      <h2>{words.storage}</h2>
      {state !== null && (
        <>
          <p>
            {state.lasting === null ? words.lastingUnknown : state.lasting ? words.lasting : words.notLasting}
          </p>
          {state.lasting === false && (
            <button type="button" class="button" onClick={() => void ask()}>
              {words.askLasting}
            </button>
          )}
          {state.sevenDays && <p class="caution">{words.sevenDays}</p>}
          {state.used !== null && state.free !== null && (
            <p class="quiet">
              {words.room(bytesText(state.used, language), bytesText(state.free, language))}
            </p>
          )}
          {state.free !== null && state.free < LITTLE && <p class="caution">{words.low}</p>}
        </>
      )}
      {photos.length > 0 && (
        <p class="quiet">
          {stored(
            photos.length,
            bytesText(
              photos.reduce((sum, { bytes }) => sum + bytes, 0),
              language,
            ),
          )}
        </p>
      )}
      <p class="quiet">{words.privateWindow}</p>
    </>
  );
}
