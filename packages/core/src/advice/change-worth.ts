import { FAULTS } from "../belief/catalogue.ts";
import { reaches } from "../belief/reach.ts";
import { onDoubtAlone } from "./called-for.ts";
import { noticedNow } from "./complaint.ts";
import { mainEffect } from "./reasons.ts";
import type { Candidate } from "./search.ts";
import { type Band, bandOf } from "./stretch-words.ts";
import type { Weighing } from "./weighing.ts";

/** A change below a stretch that has trouble too, and that another change reaches, counts a quarter. Rule A15. */
const WAITING = 0.25;
const UPWARDS: readonly Band[] = ["bottom", "middle", "top"];
/** A bigger main jet that only doubt asks for, while another stretch has trouble, counts a quarter. Rule A9. */
const UNASKED = 0.25;

/** Minutes that each of these changes saves for a minute it takes, one beside the other. */
export function worthOf(
  weighing: Weighing,
  candidates: readonly Candidate[],
): ReadonlyMap<Candidate, number> {
  const reached = new Set(
    candidates.map((candidate) => bandOf(mainEffect(weighing.present, candidate).opening)),
  );
  return new Map(
    candidates.map((candidate) => {
      const waits = waitsForAbove(weighing, candidate, reached) ? WAITING : 1;
      return [candidate, waits * gainRate(weighing, candidate)];
    }),
  );
}

/** From the top down: the main jet moves everything below it, the needle the bottom's upper end, the pilot little above. */
function waitsForAbove(weighing: Weighing, candidate: Candidate, reached: ReadonlySet<Band>): boolean {
  const { trouble } = noticedNow(weighing);
  const own = UPWARDS.indexOf(bandOf(mainEffect(weighing.present, candidate).opening));
  return UPWARDS.some((band, i) => i > own && trouble.has(band) && reached.has(band));
}

/** Minutes saved per minute spent. What a fault hides there is not saved by jets. Rule A5. */
export function gainRate(weighing: Weighing, candidate: Candidate): number {
  const { chances, present } = weighing;
  const { opening } = mainEffect(present, candidate);
  let hidden = 0;
  for (const fault of FAULTS) if (reaches(fault, opening)) hidden += chances[fault] ?? 0;
  const asked = onDoubtAlone(weighing, candidate) ? UNASKED : 1;
  return ((present.trouble - candidate.trouble) * (1 - hidden) * asked) / candidate.minutes;
}
