import { useWords } from "../../words/use-words.ts";

interface RunawayCardProps {
  readonly read: boolean;
  readonly onRead: () => void;
}

/** How to stop an engine that runs away; it must be opened before the first start. */
export function RunawayCard({ read, onRead }: RunawayCardProps) {
  const words = useWords().change;
  if (!read) {
    return (
      <button type="button" class="button main runaway-open" aria-expanded={false} onClick={onRead}>
        {words.runawayOpen}
      </button>
    );
  }
  return (
    <section class="loud" aria-live="polite">
      <h2>{words.runawayTitle}</h2>
      <ol class="steps">
        {words.runaway.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ol>
    </section>
  );
}
