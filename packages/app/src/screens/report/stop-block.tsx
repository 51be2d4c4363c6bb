import { useEffect, useRef } from "preact/hooks";
import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";

/** Cautions that belong to a sign that ends the ride. */
const STOP_CAUTIONS: Readonly<Record<string, readonly string[]>> = {
  "runs-on-by-itself": ["runaway", "hand-over"],
};
const USUAL_STOP = ["stop-at-knock", "hand-over"];

/** A stop sign was tapped: what to do now, loud. */
export function StopBlock({ signs }: { readonly signs: readonly string[] }) {
  const words = useWords().report;
  const block = useRef<HTMLElement>(null);
  const which = signs.join(" ");
  useEffect(() => {
    // Tapped far down a list, it must still be seen.
    if (which !== "") block.current?.scrollIntoView({ block: "start" });
  }, [which]);
  if (signs.length === 0) return null;
  return (
    <section ref={block} class="loud stop" role="alert">
      <h2>{words.stopTitle}</h2>
      <p>{words.stopWords}</p>
      <Cautions ids={[...new Set(signs.flatMap((sign) => STOP_CAUTIONS[sign] ?? USUAL_STOP))]} />
    </section>
  );
}

/** A warning sign was tapped: the caution, at once. */
export function WarningBlock() {
  const words = useWords().report;
  return (
    <section class="stack" role="alert">
      <h2 class="lead warn">{words.warningTitle}</h2>
      <Cautions ids={["lean-damage", "stop-at-knock"]} />
    </section>
  );
}
