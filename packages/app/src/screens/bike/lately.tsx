import { Link } from "wouter-preact";
import { dayText } from "../../preferences/day.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "./bike-bar.tsx";

const SHOWN = 12;

/** The last of the history, where a bench screen has room beside the rest. */
export function Lately({ bike }: { readonly bike: string }) {
  const words = useWords().bike;
  const [preferences] = usePreferences();
  const history = useAnswer("history", { bike, language: preferences.language });
  const lines = history?.lines.filter(({ struck, used }) => used && struck === null) ?? [];
  return (
    <>
      <section>
        <h3>{words.lately}</h3>
        <ul class="rows">
          {lines.slice(0, SHOWN).map(({ id, at, words: sentence }) => (
            <li key={id} class="lately">
              <span class="quiet small">{dayText(at, preferences)}</span>
              <span>{sentence}</span>
            </li>
          ))}
        </ul>
      </section>
      <Link class="button plain" href={bikeAddress(bike, "history")}>
        {words.allHistory}
      </Link>
    </>
  );
}
