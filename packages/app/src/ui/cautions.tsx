import { CAUTIONS } from "@jetwright/core";

/** The cautions of those ids, in the order of the catalogue. */
export function Cautions({ ids }: { readonly ids: readonly string[] }) {
  const shown = CAUTIONS.filter(({ id }) => ids.includes(id));
  if (shown.length === 0) return null;
  return (
    <ul class="stack">
      {shown.map(({ id, text }) => (
        <li key={id} class="caution">
          {text}
        </li>
      ))}
    </ul>
  );
}
