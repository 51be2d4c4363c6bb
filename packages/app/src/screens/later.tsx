import type { ComponentType } from "preact";
import { useEffect, useState } from "preact/hooks";
import { wholeEnglish } from "../words/languages.ts";

// biome-ignore lint/suspicious/noExplicitAny: the router hands each screen its own address parts
export type ScreenOf = ComponentType<{ params: any }>;

/**
 * A screen whose code and words come when its address is opened first; a copy lies on the phone after the first visit.
 */
export function later(load: () => Promise<ScreenOf>): ScreenOf {
  let loaded: ScreenOf | null = null;
  return function Later(props) {
    const [, draw] = useState(0);
    const [missing, setMissing] = useState<Error | null>(null);
    useEffect(() => {
      if (loaded !== null) return;
      Promise.all([load(), wholeEnglish()]).then(
        ([screen]) => {
          loaded = screen;
          draw((times) => times + 1);
        },
        (error: Error) => setMissing(error),
      );
    }, []);
    if (loaded !== null) {
      const Screen = loaded;
      return <Screen {...props} />;
    }
    return (
      <p class="screen quiet" role="status">
        {missing === null
          ? "…"
          : "This screen is not on the phone yet. Open it once with a network; what you wrote is kept."}
      </p>
    );
  };
}
