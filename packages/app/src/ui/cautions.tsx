import { useAnswer } from "../store/shop.ts";

/** The cautions of those ids, or all, in the order of the catalogue. */
export function Cautions({ ids }: { readonly ids: readonly string[] | "all" }) {
  const shown = useAnswer("cautions", { ids });
  if (shown === null || shown.length === 0) return null;
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
