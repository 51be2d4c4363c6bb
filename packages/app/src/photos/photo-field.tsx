import { useId } from "preact/hooks";
import { useShop } from "../../store/shop.ts";
import { say } from "../../ui/toast.tsx";
import { useWords } from "../../words/use-words.ts";

interface PhotoFieldProps {
  /** Pictures already taken of it. */
  readonly count: number;
  readonly onKept: (hash: string) => void;
}

/** Takes a picture and keeps it on this device under its SHA-256. */
export function PhotoField({ count, onKept }: PhotoFieldProps) {
  const words = useWords().change;
  const { photos } = useShop().database;
  const id = useId();

  async function keep(file: File | undefined): Promise<void> {
    if (file === undefined) return;
    // Browsers give no fingerprints on pages without a protected connection.
    if (globalThis.crypto?.subtle === undefined) {
      say(words.photoNot);
      return;
    }
    try {
      const digest = await crypto.subtle.digest("SHA-256", await file.arrayBuffer());
      const hash = [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, "0")).join("");
      await photos.put({ hash, blob: file });
      onKept(hash);
      say(words.photoKept);
    } catch {
      say(words.photoFull);
    }
  }

  return (
    <div class="field">
      <label class="button plain" for={id}>
        {words.photo}
        {count > 0 && ` (${words.photos(count)})`}
      </label>
      <input
        id={id}
        class="unseen"
        type="file"
        accept="image/*"
        capture="environment"
        onChange={(event) => {
          void keep(event.currentTarget.files?.[0]);
          event.currentTarget.value = "";
        }}
      />
      <span class="hint">{words.photoHint}</span>
    </div>
  );
}
