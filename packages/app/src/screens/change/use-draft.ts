import { useEffect, useState } from "preact/hooks";
import { useShop } from "../../store/shop.ts";
import { type ChangeDraft, readChangeDraft } from "./change-draft.ts";

const keyOf = (bike: string): string => `change:${bike}`;

/** The change under way on a bike, written through to this device at every step; undefined while it is looked up. */
export function useChangeDraft(
  bike: string,
): readonly [ChangeDraft | null | undefined, (draft: ChangeDraft | null) => void] {
  const { settings } = useShop().database;
  const [draft, setDraft] = useState<ChangeDraft | null | undefined>(undefined);
  useEffect(() => {
    let current = true;
    settings.get(keyOf(bike)).then(
      (kept) => current && setDraft(readChangeDraft(kept?.value)),
      () => current && setDraft(null),
    );
    return () => {
      current = false;
    };
  }, [bike]);
  const put = (next: ChangeDraft | null) => {
    setDraft(next);
    const written =
      next === null ? settings.delete(keyOf(bike)) : settings.put({ key: keyOf(bike), value: next });
    void Promise.resolve(written).catch(() => undefined);
  };
  return [draft, put];
}
