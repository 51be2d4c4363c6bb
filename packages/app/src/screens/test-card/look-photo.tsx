import { PhotoField } from "../../photos/photo-field.tsx";
import { removePhoto } from "../../photos/remove-photo.ts";
import { useAnswer, useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";
import { keepUndoable } from "../fitted/keep-undoable.ts";

/** Tests in which the plug is looked at. */
const PLUG_LOOKS: ReadonlySet<string> = new Set(["plug-look-part", "plug-look-full"]);

interface LookPhotoProps {
  readonly bike: string;
  readonly test: string;
  /** What the test is called: it stands under the picture. */
  readonly of: string;
}

/** A picture of the plug, where a test looks at it, so that the next look has something to be held against. */
export function LookPhoto({ bike, test, of }: LookPhotoProps) {
  const words = useWords().photos;
  const shop = useShop();
  const photos = useAnswer("photos", { bike }) ?? [];
  if (!PLUG_LOOKS.has(test)) return null;

  async function keep(hash: string): Promise<void> {
    const kept = await keepUndoable(shop, bike, words, { kind: "photo", body: { hash, of } });
    if (kept.ok) say(words.kept, kept.value);
    else say(kept.detail);
  }

  return (
    <PhotoField
      label={words.plug}
      photos={photos.filter((photo) => photo.of === of)}
      onKept={(hash) => void keep(hash)}
      onRemove={({ record }) => void removePhoto(shop, bike, record, words)}
    />
  );
}
