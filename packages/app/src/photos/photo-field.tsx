import { useId, useState } from "preact/hooks";
import { canHash } from "../store/photo-shelf.ts";
import { useShop } from "../store/shop.ts";
import { say } from "../ui/toast.tsx";
import { useWords } from "../words/use-words.ts";
import { PhotoThumb } from "./photo-thumb.tsx";
import type { ShownPhoto } from "./shown-photo.ts";
import { shrinkPhoto } from "./shrink-photo.ts";

interface PhotoFieldProps<Photo extends ShownPhoto> {
  readonly label: string;
  /** Pictures of it so far, newest first. */
  readonly photos: readonly Photo[];
  /** A picture is on this device under this hash; it stays there only once something names it. */
  readonly onKept: (hash: string) => void;
  readonly onRemove: (photo: Photo) => void;
}

/** Takes or chooses a picture and keeps it, made smaller, on this device. */
export function PhotoField<Photo extends ShownPhoto>({
  label,
  photos,
  onKept,
  onRemove,
}: PhotoFieldProps<Photo>) {
  const words = useWords().photos;
  const shelf = useShop().database.photos;
  const [busy, setBusy] = useState(false);

  async function keep(file: File): Promise<void> {
    if (!canHash()) return say(words.unprotected);
    setBusy(true);
    const shrunk = await shrinkPhoto(file);
    if (!shrunk.ok)
      say(shrunk.reason === "too-large" ? words.tooLarge(file.name) : words.unreadable(file.name));
    else await shelf.put(shrunk.value).then(onKept, () => say(words.full));
    setBusy(false);
  }
  return (
    <div class="field">
      <span class="label">{label}</span>
      <div class="photo-ways">
        {photos.length > 0 && <PhotoThumb photos={photos} onRemove={onRemove} />}
        <PickButton words={busy ? words.working : words.take} of={label} camera busy={busy} onPick={keep} />
        <PickButton words={words.choose} of={label} busy={busy} onPick={keep} />
      </div>
      <span class="hint">{words.hint}</span>
    </div>
  );
}

interface PickButtonProps {
  readonly words: string;
  readonly of: string;
  /** Straight to the camera, where the device has one. */
  readonly camera?: boolean;
  readonly busy: boolean;
  readonly onPick: (file: File) => void;
}

function PickButton({ words, of, camera, busy, onPick }: PickButtonProps) {
  const id = useId();
  return (
    <label class="button plain file" for={id}>
      <span>
        {words}
        <span class="unseen">: {of}</span>
      </span>
      <input
        id={id}
        class="unseen"
        type="file"
        accept="image/*"
        capture={camera ? "environment" : undefined}
        disabled={busy}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = "";
          if (file !== undefined) onPick(file);
        }}
      />
    </label>
  );
}
