import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";

/** A bike: its mixture picture and the next step. */
export function BikePage({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const view = useAnswer("bike", { bike });
  const advice = useAnswer("advice", { bike });
  return (
    <Screen title={view?.name ?? "…"}>
      {advice?.ok && (
        <section class="loud">
          <h2>{advice.value.step.title}</h2>
        </section>
      )}
    </Screen>
  );
}
