import { Link } from "wouter-preact";
import { useWords } from "../words/use-words.ts";

/** Where the list of bikes leads besides the bikes. */
export function HomeBar({ here }: { readonly here?: "more" }) {
  const words = useWords().home;
  return (
    <>
      <Link href="/drawer">{words.drawer}</Link>
      <Link href="/start">{words.start}</Link>
      <Link href="/more" aria-current={here === "more" ? "page" : undefined}>
        {words.more}
      </Link>
    </>
  );
}
