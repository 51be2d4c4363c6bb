import { useState } from "preact/hooks";
import { usePreferences } from "../preferences/use-preferences.ts";
import "../styles/photos.css";
import { dayText } from "../words/dates.ts";
import { useWords } from "../words/use-words.ts";
import { PhotoDialog } from "./photo-dialog.tsx";
import { photoTitle, type ShownPhoto } from "./shown-photo.ts";
import { usePhoto } from "./use-photo.ts";

interface PhotoThumbProps<Photo extends ShownPhoto> {
  /** One at least, newest first: the first is drawn, all can be looked through. */
  readonly photos: readonly Photo[];
  readonly onRemove: (photo: Photo) => void;
}

/** A small picture; a tap opens it large. Says so where the picture is not on this device. */
export function PhotoThumb<Photo extends ShownPhoto>({ photos, onRemove }: PhotoThumbProps<Photo>) {
  const all = useWords();
  const words = all.photos;
  const [{ language }] = usePreferences();
  const [open, setOpen] = useState(false);
  const [first] = photos;
  if (first === undefined) throw new RangeError("No picture to draw small: one at least is needed, got 0");
  return (
    <>
      <button
        type="button"
        class="photo-thumb"
        aria-label={words.open(photoTitle(first, all), dayText(first.at, language), photos.length)}
        aria-haspopup="dialog"
        onClick={() => setOpen(true)}
      >
        <Small key={first.hash} hash={first.hash} />
        {photos.length > 1 && <span class="photo-count small">{photos.length}</span>}
      </button>
      {open && <PhotoDialog photos={photos} onRemove={onRemove} onClose={() => setOpen(false)} />}
    </>
  );
}

function Small({ hash }: { readonly hash: string }) {
  const words = useWords().photos;
  const found = usePhoto(hash);
  if (found === null) return null;
  if ("lack" in found) {
    return <span class="small quiet">{found.lack === "coming" ? words.coming : words.notHere}</span>;
  }
  return <img src={found.address} alt="" decoding="async" />;
}
