import { useEffect, useState } from "preact/hooks";
import { Link } from "wouter-preact";
import { MixturePicture } from "../../pictures/mixture-picture.tsx";
import { heightText, temperatureText } from "../../preferences/units.ts";
import { usePreferences } from "../../preferences/use-preferences.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import "../../styles/bike.css";
import { orderAddress } from "../orders/order-address.ts";
import { BikeBar, bikeAddress } from "./bike-bar.tsx";
import { FittedList } from "./fitted-list.tsx";
import { Lately } from "./lately.tsx";
import { MixtureWords } from "./mixture-words.tsx";
import { NextBlock } from "./next-block.tsx";
import { Suspects } from "./suspects.tsx";

/** A bike: how it runs, what to do next, and what is fitted. */
export function BikePage({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().bike;
  const [preferences] = usePreferences();
  const view = useAnswer("bike", { bike });
  const advice = useAnswer("advice", { bike });
  const standing = useAnswer("standing", { bike });
  const governs = useAnswer("governs", { bike });
  const fitted = useAnswer("fitted", { bike });
  const bench = useBench();
  if (advice !== null && !advice.ok && advice.reason === "no-such-bike") {
    return (
      <Screen title={words.noBike} back={{ to: "/", words: words.bikes }}>
        <p>{words.noSuch}</p>
      </Screen>
    );
  }
  const there = standing?.ok ? standing.value : null;
  const air = there?.air.noted ? there.air : null;
  const links = [
    ["air", words.air],
    ["trip", words.trip],
    ["here", words.here],
    ["chart", words.chart],
    ["best", words.best],
    ["sheet", words.sheet],
    ["listen", words.listen],
    ...(view?.order ? [] : ([["order", words.order]] as const)),
    ["history", words.history],
    ["ask", words.ask],
    ["describe", words.describe],
  ] as const;
  return (
    <Screen
      title={view?.name ?? bike}
      aside={
        view &&
        words.aside(
          view.rides,
          air ? temperatureText(air.celsius, preferences) : "",
          air && air.heightM !== null ? heightText(air.heightM, preferences) : null,
        )
      }
      back={{ to: "/", words: words.bikes }}
      bar={<BikeBar bike={bike} />}
      wide
    >
      {view?.order && (
        <Link class="row order-open" href={orderAddress(view.order.id)}>
          <span>{words.openOrder(view.order.complaint)}</span>
          <span aria-hidden="true">→</span>
        </Link>
      )}
      {advice !== null && !advice.ok && (
        <p>{advice.reason === "bike-not-described" ? words.notDescribed : advice.detail}</p>
      )}
      <div class="columns">
        <div class="column">
          {advice === null && <div class="awaited" />}
          {advice?.ok && (
            <>
              <MixturePicture
                readings={advice.value.picture}
                after={advice.value.pictureAfter}
                governs={governs?.ok ? governs.value.stretches : null}
              />
              {there ? (
                <MixtureWords standing={there} twoSided={advice.value.twoSided} />
              ) : (
                <p class="awaited-words" />
              )}
              {there && there.told > 0 && <Suspects suspects={advice.value.suspects} />}
              <NextBlock bike={bike} step={advice.value.step} />
              {!advice.value.settled && <p class="quiet small">{words.rough}</p>}
            </>
          )}
          {view !== null && view.warnings.length > 0 && (
            <details>
              <summary>{words.assumed(view.warnings.length)}</summary>
              <ul class="stack folded">
                {view.warnings.map(({ code, text }) => (
                  <li key={`${code} ${text}`}>{words.assumption[code] ?? text}</li>
                ))}
              </ul>
            </details>
          )}
          {advice?.ok && advice.value.leftOut.length > 0 && (
            <details>
              <summary>{words.leftOut(advice.value.leftOut.length)}</summary>
              <ul class="stack folded">
                {advice.value.leftOut.map(({ record, why }) => (
                  <li key={`${record} ${why}`}>{why}</li>
                ))}
              </ul>
            </details>
          )}
        </div>
        <div class="column">
          {fitted === null && <div class="awaited" />}
          {fitted?.ok && (
            <section>
              <h3>{words.fitted}</h3>
              <FittedList bike={bike} fitted={fitted.value} />
            </section>
          )}
          <nav aria-label={words.links}>
            <ul class="rows">
              {links.map(([screen, name]) => (
                <li key={screen}>
                  <Link class="row" href={bikeAddress(bike, screen)}>
                    <span>{name}</span>
                    <span aria-hidden="true">→</span>
                  </Link>
                </li>
              ))}
            </ul>
          </nav>
        </div>
        {bench && (
          <aside class="column">
            <Lately bike={bike} />
          </aside>
        )}
      </div>
    </Screen>
  );
}

/** Wide enough for a third column. */
const BENCH = "(min-width: 80rem)";

function useBench(): boolean {
  const [bench, setBench] = useState(() => window.matchMedia(BENCH).matches);
  useEffect(() => {
    const query = window.matchMedia(BENCH);
    const look = () => setBench(query.matches);
    query.addEventListener("change", look);
    return () => query.removeEventListener("change", look);
  }, []);
  return bench;
}
