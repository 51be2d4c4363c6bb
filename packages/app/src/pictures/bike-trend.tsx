import { useAnswer } from "../store/shop.ts";
import { useWords } from "../words/use-words.ts";
import { TrendPicture } from "./trend-picture.tsx";

/** The trend of one bike, as a section of its own; nothing where there is no ride yet. */
export function BikeTrend({ bike }: { readonly bike: string }) {
  const words = useWords().pictures.trend;
  const trend = useAnswer("trend", { bike });
  if (!trend?.ok || trend.value.length === 0) return null;
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      {trend.value.length < 2 ? <p class="quiet">{words.few}</p> : <TrendPicture rides={trend.value} />}
    </section>
  );
}
