import { Cautions } from "../../ui/cautions.tsx";
import { useWords } from "../../words/use-words.ts";
import { type ChangeDraft, opensBody, opensBowl } from "./change-draft.ts";

/** Tools and cautions before anything is opened. */
export function Ready({ draft }: { readonly draft: ChangeDraft }) {
  const words = useWords().change;
  const { plan } = draft;
  const usual = opensBowl(draft)
    ? words.usualTools
    : opensBody(draft)
      ? words.usualTools.slice(0, 2)
      : words.usualTools.slice(1, 2);
  // What the ticks below ask for is not said twice.
  const cautions = opensBody(draft)
    ? ["makers-manual", "petrol-vapour", "hot-parts", "eyes-and-skin"]
    : ["makers-manual", "fumes", "hot-parts"];
  return (
    <>
      {plan.title !== null && <h2>{plan.title}</h2>}
      <p>
        <strong>{words.needs}:</strong> {(plan.tools.length > 0 ? plan.tools : usual).join(" · ")}
      </p>
      <Cautions ids={cautions} />
    </>
  );
}
