import { useInsecureWords } from "./insecure-words.ts";

/** What the browser keeps from this page, and how to get it; nothing where the page came protected. */
export function InsecureNotice() {
  const words = useInsecureWords();
  if (window.isSecureContext) return null;
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      <p>{words.kept}</p>
      <p>{words.how}</p>
    </section>
  );
}
