import { useEffect, useId, useRef, useState } from "preact/hooks";
import { usePreferences } from "../preferences/use-preferences.ts";
import { clockText, dayText, fileDay } from "../words/dates.ts";
import { useWords } from "../words/use-words.ts";
import { photoTitle, type ShownPhoto } from "./shown-photo.ts";
import { usePhoto } from "./use-photo.ts";

interface PhotoDialogProps<Photo extends ShownPhoto> {
  /** One at least; the first is shown first. */
  readonly photos: readonly Photo[];
  readonly onRemove: (photo: Photo) => void;
  readonly onClose: () => void;
}

/** Pictures large, one at a time: what part, who took it and when; enlarged, saved as a file, removed. */
export function PhotoDialog<Photo extends ShownPhoto>({
  photos,
  onRemove,
  onClose,
}: PhotoDialogProps<Photo>) {
  const all = useWords();
  const words = all.photos;
  const [{ language }] = usePreferences();
  const dialog = useRef<HTMLDialogElement>(null);
  const title = useId();
  const [at, setAt] = useState(0);
  useEffect(() => dialog.current?.showModal(), []);
  const photo = photos[Math.min(at, photos.length - 1)]!;
  const name = photoTitle(photo, all);
  const told = [
    photo.part !== null && photo.of,
    `${dayText(photo.at, language)}, ${clockText(photo.at, language)}`,
    photo.by !== null && words.by(photo.by),
  ];
  return (
    <dialog ref={dialog} class="photo-dialog" aria-labelledby={title} onClose={onClose}>
      <header>
        <h2 id={title}>{name}</h2>
        <button type="button" class="button plain" onClick={() => dialog.current?.close()}>
          {words.close}
        </button>
      </header>
      <Large key={photo.hash} photo={photo} name={name} />
      <p class="quiet">{told.filter(Boolean).join(" · ")}</p>
      {photos.length > 1 && (
        <div class="photo-ways">
          <button type="button" class="button plain" disabled={at === 0} onClick={() => setAt(at - 1)}>
            {words.newer}
          </button>
          <span>{words.place(at + 1, photos.length)}</span>
          <button
            type="button"
            class="button plain"
            disabled={at >= photos.length - 1}
            onClick={() => setAt(at + 1)}
          >
            {words.older}
          </button>
        </div>
      )}
      <button
        type="button"
        class="button plain"
        onClick={() => {
          dialog.current?.close();
          onRemove(photo);
        }}
      >
        {words.remove}
      </button>
    </dialog>
  );
}

function Large({ photo, name }: { readonly photo: ShownPhoto; readonly name: string }) {
  const words = useWords().photos;
  const found = usePhoto(photo.hash);
  const frame = useRef<HTMLElement>(null);
  const [large, setLarge] = useState(false);
  useEffect(() => {
    // From the middle outwards: there the part is.
    const { scrollWidth = 0, clientWidth = 0, scrollHeight = 0, clientHeight = 0 } = frame.current ?? {};
    frame.current?.scrollTo((scrollWidth - clientWidth) / 2, (scrollHeight - clientHeight) / 2);
  }, [large]);
  if (found === null) return <div class="photo-large" />;
  if ("lack" in found) return <p role="status">{words.lack[found.lack]}</p>;
  return (
    <>
      {/* It scrolls when large, so the keyboard must reach it. */}
      <section
        ref={frame}
        class={large ? "photo-large larger" : "photo-large"}
        aria-label={name}
        tabIndex={large ? 0 : -1}
      >
        <img src={found.address} alt={name} />
      </section>
      <div class="photo-ways">
        <button type="button" class="button plain" onClick={() => setLarge(!large)}>
          {large ? words.whole : words.larger}
        </button>
        <a class="button plain" href={found.address} download={words.fileName(fileDay(photo.at))}>
          {words.save}
        </a>
      </div>
    </>
  );
}
