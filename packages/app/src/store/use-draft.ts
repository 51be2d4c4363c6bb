import { useEffect, useRef, useState } from "preact/hooks";
import type { Database } from "./database.ts";

interface Kept<Value> {
  /** Null until it is read. */
  readonly value: Value | null;
  /** Changes it and writes it through. */
  readonly change: (to: (before: Value) => Value) => void;
  /** Starts anew; what is stored goes away. */
  readonly clear: () => void;
}

/**
 * Something half done that outlives a reload, under its own key of this device's settings. `read` makes a value of
 * whatever is stored, nothing included, and never throws. A browser that stores nothing only loses the outliving.
 */
export function useDraft<Value>(
  database: Database,
  key: string,
  read: (stored: unknown) => Value | Promise<Value>,
): Kept<Value> {
  const [value, setValue] = useState<Value | null>(null);
  const now = useRef<Value | null>(null);
  const put = (next: Value) => {
    now.current = next;
    setValue(next);
  };
  useEffect(() => {
    let current = true;
    now.current = null;
    setValue(null);
    database.settings
      .get(key)
      .catch(() => undefined)
      .then((kept) => read(kept?.value))
      .then((first) => current && put(first));
    return () => {
      current = false;
    };
  }, [database, key]);
  return {
    value,
    change: (to) => {
      if (now.current === null) return;
      const next = to(now.current);
      put(next);
      void database.settings.put({ key, value: next }).catch(() => undefined);
    },
    clear: () => {
      void database.settings.delete(key).catch(() => undefined);
      void Promise.resolve(read(undefined)).then(put);
    },
  };
}
