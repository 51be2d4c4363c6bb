import { useEffect, useRef, useState } from "preact/hooks";
import { useShop } from "../../store/shop.ts";
import { type ChangeDraft, readChangeDraft } from "./change-draft.ts";

const keyOf = (bike: string): string => `change:${bike}`;

interface Changing {
  /** Undefined while it is looked up. */
  readonly draft: ChangeDraft | null | undefined;
  readonly setDraft: (draft: ChangeDraft | null) => void;
  /** For what took a while: changes the draft as it stands by then; false when there is none any more. */
  readonly amend: (to: (draft: ChangeDraft) => ChangeDraft) => boolean;
}

/** The change under way on a bike, written through to this device at every step. */
export function useChangeDraft(bike: string): Changing {
  const { settings } = useShop().database;
  const [draft, setDraft] = useState<ChangeDraft | null | undefined>(undefined);
  const now = useRef<ChangeDraft | null>(null);
  const read = (kept: ChangeDraft | null) => {
    now.current = kept;
    setDraft(kept);
  };
  useEffect(() => {
    let current = true;
    settings.get(keyOf(bike)).then(
      (kept) => current && read(readChangeDraft(kept?.value)),
      () => current && read(null),
    );
    return () => {
      current = false;
    };
  }, [bike]);
  const put = (next: ChangeDraft | null) => {
    read(next);
    const written =
      next === null ? settings.delete(keyOf(bike)) : settings.put({ key: keyOf(bike), value: next });
    void Promise.resolve(written).catch(() => undefined);
  };
  return {
    draft,
    setDraft: put,
    amend: (to) => {
      if (now.current === null) return false;
      put(to(now.current));
      return true;
    },
  };
}
