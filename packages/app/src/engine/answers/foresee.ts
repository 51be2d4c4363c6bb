import type { EngineState, ShopInWords } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { bikeView } from "./bike.ts";
import { fittedOn } from "./fitted.ts";
import { governsFor } from "./governs.ts";
import { standingOf } from "./standing.ts";

/** What a bike's page asks, by the names of its questions. */
export interface BikePageAnswers {
  readonly bike: ReturnType<typeof bikeView>;
  readonly advice: ReturnType<typeof adviceFor>;
  readonly standing: ReturnType<typeof standingOf>;
  readonly governs: ReturnType<typeof governsFor>;
  readonly fitted: ReturnType<typeof fittedOn>;
}

/** The answers of a bike's page as they will be once this line is in the log. They hold for that log alone. */
export function foresee(
  state: EngineState,
  { bike, line }: { readonly bike: string; readonly line: string },
): BikePageAnswers {
  const then: ShopInWords = { shop: state.ahead(line), words: state.words };
  const given = { bike };
  return {
    bike: bikeView(then, given),
    advice: adviceFor(then, given),
    standing: standingOf(then, given),
    governs: governsFor(then, given),
    fitted: fittedOn(then, given),
  };
}
