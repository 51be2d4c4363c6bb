import { openingName } from "@jetwright/core";
import type { LeadAt } from "../../engine/answers/governs.ts";
import { ClipPicture } from "../../pictures/clip-picture.tsx";
import { percentRich } from "../../pictures/percent.ts";
import { ScrewPicture } from "../../pictures/screw-picture.tsx";
import { CarburetorSection } from "../../pictures/section/carburetor-section.tsx";
import { useFigure } from "../../preferences/use-figure.ts";
import { useAnswer } from "../../store/shop.ts";
import { Screen } from "../../ui/screen.tsx";
import { useWords } from "../../words/use-words.ts";
import { bikeAddress } from "../bike/bike-bar.tsx";

/** The carburetor of a bike as fitted: in section, its clip, its screw, and what each part has to say where. */
export function Carburetor({ params }: { readonly params: { readonly bike: string } }) {
  const { bike } = params;
  const words = useWords().pictures.carburetor;
  const answer = useAnswer("anatomy", { bike, step: null });
  const governs = useAnswer("governs", { bike });
  const fitted = useAnswer("fitted", { bike });
  const back = { to: bikeAddress(bike, "fitted"), words: words.back };
  if (answer === null || !answer.ok) {
    return (
      <Screen title={words.title} back={back}>
        <p class="quiet">{answer === null ? "…" : answer.detail}</p>
      </Screen>
    );
  }
  const { now } = answer.value;
  const known = (part: "clip" | "screw") => !now.usual.includes(part);
  const sideKnown = fitted?.ok === true && fitted.value.screw !== null;
  return (
    <Screen title={words.title} back={back} wide>
      <div class="columns stack">
        <CarburetorSection anatomy={now} />
        <section class="stack">
          <h2>{words.needle}</h2>
          <ClipPicture grooves={now.grooves} clip={known("clip") ? now.clip : null} />
          {sideKnown && (
            <>
              <h2>{words.screw}</h2>
              <ScrewPicture kind={now.screw.kind} turns={known("screw") ? now.screw.turns : null} />
            </>
          )}
          {governs?.ok && (
            <details>
              <summary>{words.leads}</summary>
              <ul class="rows">
                {governs.value.at.map((at) => (
                  <li key={at.opening} class="row">
                    <LeadsAt at={at} />
                  </li>
                ))}
              </ul>
            </details>
          )}
        </section>
      </div>
    </Screen>
  );
}

/** Shares below this are not worth a word. */
const WORTH_NAMING = 0.1;

function LeadsAt({ at: { opening, shares, slideStep } }: { readonly at: LeadAt }) {
  const words = useWords().pictures;
  const figure = useFigure();
  const { pilotShare, needleShare, mainShare, slideStep: slideWords, richer } = words.section;
  const named = [
    { name: pilotShare, share: shares.pilot },
    { name: needleShare, share: shares.needle },
    { name: mainShare, share: shares.main },
  ]
    .filter(({ share }) => share >= WORTH_NAMING)
    .sort((a, b) => b.share - a.share)
    .map(({ name, share }) => `${name} ${Math.round(share * 100)} %`);
  return (
    <span>
      <strong>{words.spokenOpening(openingName(opening))}:</strong> {named.join(", ")}.
      {slideStep !== null && ` ${slideWords}: ${richer(figure(percentRich(slideStep), 0))}.`}
    </span>
  );
}
