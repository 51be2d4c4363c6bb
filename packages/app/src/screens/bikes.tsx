import { Link } from "wouter-preact";
import { useAnswer } from "../store/shop.ts";
import { Screen } from "../ui/screen.tsx";
import { useWords } from "../words/use-words.ts";

/** Every bike, the last touched first; on the first visit the two ways to begin. */
export function Bikes() {
  const words = useWords().home;
  const bikes = useAnswer("bikes", null);
  return (
    <Screen title={words.title}>
      {bikes !== null && bikes.length === 0 && <p>{words.first}</p>}
      <ul class="rows">
        {bikes?.map(({ id, name, strokes, displacementCc, away }) => (
          <li key={id}>
            <Link class="row" href={`/bike/${encodeURIComponent(id)}`}>
              <h3>{name}</h3>
              <span class="quiet small">
                {[
                  strokes && words.strokes(strokes),
                  displacementCc && words.cc(displacementCc),
                  away && words.away,
                ]
                  .filter(Boolean)
                  .join(" · ")}
              </span>
            </Link>
          </li>
        ))}
      </ul>
    </Screen>
  );
}
