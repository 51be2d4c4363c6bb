import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";

interface WorkHeadProps {
  readonly cautions: readonly string[];
  readonly tools: readonly string[];
}

/** What to mind and what to fetch, before the first step. */
export function WorkHead({ cautions, tools }: WorkHeadProps) {
  const words = useWords().cards;
  return (
    <>
      {cautions.length > 0 && (
        <section class="stack work">
          <h2>{words.cautions}</h2>
          <Cautions ids={cautions} />
        </section>
      )}
      {tools.length > 0 && (
        <section class="work">
          <h2>{words.tools}</h2>
          <p>{tools.join(" · ")}</p>
        </section>
      )}
    </>
  );
}
