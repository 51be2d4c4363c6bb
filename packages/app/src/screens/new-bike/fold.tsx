import type { ComponentChildren } from "preact";
import { useEffect, useState } from "preact/hooks";

interface FoldProps {
  readonly title: string;
  /** What leaving it empty costs, said while it is shut too. */
  readonly cost: string;
  /** Something stands in it, or is wrong in it: it opens by itself, and never closes by itself. */
  readonly open: boolean;
  readonly children: ComponentChildren;
}

/** A part of a form that may stay shut. */
export function Fold({ title, cost, open, children }: FoldProps) {
  const [shown, setShown] = useState(open);
  useEffect(() => {
    if (open) setShown(true);
  }, [open]);
  return (
    <details open={shown} onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary>
        <span>
          {title}
          {cost !== "" && <span class="cost small quiet">{cost}</span>}
        </span>
      </summary>
      <div class="stack folded">{children}</div>
    </details>
  );
}
