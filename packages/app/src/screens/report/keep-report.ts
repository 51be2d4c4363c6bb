import { useEffect, useRef, useState } from "preact/hooks";
import type { Shop } from "../../store/shop.ts";
import type { StoredRecord } from "../../store/tables.ts";
import { isEmpty, type ReportDraft, reportBody } from "./draft.ts";

/** Long enough for a second tap to come. */
const SETTLED_AFTER = 120;

export interface Ready {
  readonly of: ReportDraft;
  readonly record: StoredRecord;
}

/** True when both make the same record, wherever the report stands. */
const sameReport = (a: ReportDraft, b: ReportDraft): boolean =>
  a.warm === b.warm &&
  a.noticed === b.noticed &&
  a.unsure === b.unsure &&
  a.choke === b.choke &&
  a.felt === b.felt &&
  a.more === b.more &&
  a.words === b.words;

/** Shown as busy after this long: most disks are done before, and drawing takes time too. */
const SLOW_AFTER = 150;

interface Keeping {
  /** The disk takes its time. */
  readonly busy: boolean;
  /** The record of the draft as it stands; made ready before, where the last tap had settled. */
  readonly ready: () => StoredRecord;
  /** Keeps a record; null where one is on its way already. */
  readonly take: (record: StoredRecord) => Promise<Awaited<ReturnType<Shop["take"]>> | null>;
}

/**
 * Makes the record of a settled draft ready and has the advice after it worked out ahead, so that the next step is
 * there when the record is kept.
 */
export function useReady(
  shop: Shop,
  bike: string,
  draft: ReportDraft | null,
  healthy: readonly string[],
  atLastPage: boolean,
  remember: (record: string) => void,
): Keeping {
  const made = useRef<Ready | null>(null);
  const underWay = useRef(false);
  const [busy, setBusy] = useState(false);
  const make = (of: ReportDraft): StoredRecord => {
    if (made.current !== null && sameReport(made.current.of, of)) return made.current.record;
    const record = shop.prepare({ kind: "ride-reported", bike, body: reportBody(of, healthy) });
    made.current = { of, record };
    remember(record.id);
    shop.foresee(bike, record);
    return record;
  };
  useEffect(() => {
    if (draft === null || !atLastPage || isEmpty(draft)) return;
    if (made.current !== null && sameReport(made.current.of, draft)) return;
    const timer = setTimeout(() => underWay.current || make(draft), SETTLED_AFTER);
    return () => clearTimeout(timer);
  }, [draft, bike, atLastPage]);
  return {
    busy,
    take: async (record) => {
      if (underWay.current) return null;
      underWay.current = true;
      const slow = setTimeout(() => setBusy(true), SLOW_AFTER);
      const kept = await shop.take([record]);
      clearTimeout(slow);
      underWay.current = false;
      setBusy(false);
      return kept;
    },
    ready: () => {
      if (draft === null) throw new RangeError("A report is kept only once its draft is read");
      return make(draft);
    },
  };
}
