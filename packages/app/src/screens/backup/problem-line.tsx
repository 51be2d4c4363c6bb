import type { RecordProblem } from "@jetwright/records";
import { useFlawText } from "../../words/use-flaw-text.ts";
import { useWords } from "../../words/use-words.ts";

/** Tells problems of one list apart. */
export const keyOf = ({ line, record, path, what }: RecordProblem): string =>
  [line, record, path, what].join();

/** What is wrong with one record of a log and how to mend it, in the language in use. */
export function ProblemLine({ problem }: { readonly problem: RecordProblem }) {
  const { problemAt } = useWords().backup;
  const { line, record, path } = problem;
  const { what, mend } = useFlawText()(problem);
  return (
    <li class="problem">
      <b>{[line !== null && problemAt(line), record, path].filter(Boolean).join(" · ")}</b>: {what}. {mend}
    </li>
  );
}
