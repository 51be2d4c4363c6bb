import type { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { airPreview } from "./air/air-preview.ts";
import { heightChart } from "./air/height-chart.ts";
import { tripPlan } from "./air/trip-plan.ts";
import { anatomyFor } from "./anatomy.ts";
import { askFor } from "./ask.ts";
import { bikeView } from "./bike.ts";
import { bikeList } from "./bikes.ts";
import { checkCard } from "./check-card.ts";
import { compared } from "./compared.ts";
import { copyState } from "./copy/copy-state.ts";
import { copyText } from "./copy/copy-text.ts";
import { readPiece } from "./copy/read-piece.ts";
import { drawerView } from "./drawer/drawer-view.ts";
import { jetsWanted } from "./drawer/jets-wanted.ts";
import { needleShape } from "./drawer/needle-shape.ts";
import { fittedOn } from "./fitted.ts";
import { foresee } from "./foresee.ts";
import { fuelFlow } from "./fuel-flow.ts";
import { governsFor } from "./governs.ts";
import { historyOf } from "./history.ts";
import { rideForm } from "./ride-form.ts";
import { sheetOf } from "./sheet/sheet.ts";
import { standingOf } from "./standing.ts";
import { starting } from "./starting.ts";
import { takeBack } from "./take-back.ts";
import { testCard } from "./test-card.ts";
import { throttleMarks } from "./throttle-marks.ts";

/**
 * Everything the page may ask the worker, by name: each a pure function of the state and of what is given. A new
 * question is a file of its own and one line here.
 */
export const ANSWERS = {
  bikes: bikeList,
  bike: bikeView,
  advice: adviceFor,
  fitted: fittedOn,
  standing: standingOf,
  foresee,
  rideForm,
  checkCard,
  testCard,
  throttleMarks,
  fuelFlow,
  airPreview,
  heightChart,
  tripPlan,
  drawer: drawerView,
  jetsWanted,
  needleShape,
  governs: governsFor,
  anatomy: anatomyFor,
  ask: askFor,
  compared,
  copyState,
  copyText,
  history: historyOf,
  readPiece,
  sheet: sheetOf,
  starting,
  takeBack,
} as const satisfies Readonly<Record<string, (state: EngineState, given: never) => unknown>>;

export type Question = keyof typeof ANSWERS;
export type ArgumentsOf<Q extends Question> = Parameters<(typeof ANSWERS)[Q]>[1];
export type AnswerOf<Q extends Question> = ReturnType<(typeof ANSWERS)[Q]>;
