import { useEffect, useState } from "preact/hooks";

/** A value that can be watched. */
export interface Watched<Value> {
  readonly get: () => Value;
  readonly set: (value: Value) => void;
  readonly watch: (look: () => void) => () => void;
}

export function watched<Value>(first: Value): Watched<Value> {
  let value = first;
  const looks = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      value = next;
      for (const look of [...looks]) look();
    },
    watch: (look) => {
      looks.add(look);
      return () => looks.delete(look);
    },
  };
}

/** The value now; draws again when it changes. */
export function useWatched<Value>(source: Watched<Value>): Value {
  const [, draw] = useState(0);
  useEffect(() => source.watch(() => draw((times) => times + 1)), [source]);
  return source.get();
}
