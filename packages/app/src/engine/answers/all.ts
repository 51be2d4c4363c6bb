import type { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { bikeView } from "./bike.ts";
import { bikeList } from "./bikes.ts";
import { cautionsSaid } from "./cautions.ts";
import { copyState } from "./copy/copy-state.ts";
import { fittedOn } from "./fitted.ts";
import { foresee } from "./foresee.ts";
import { governsFor } from "./governs.ts";
import { standingOf } from "./standing.ts";

/** A question whose code comes with the first asking: it is not on the way from a bike to its next step. */
const later =
  <Reckon extends (state: EngineState, given: never) => unknown>(load: () => Promise<Reckon>) =>
  async (state: EngineState, given: Parameters<Reckon>[1]): Promise<Awaited<ReturnType<Reckon>>> =>
    (await load())(state, given as never) as Awaited<ReturnType<Reckon>>;

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
  rideForm: later(() => import("./ride-form.ts").then((m) => m.rideForm)),
  cautions: cautionsSaid,
  checkCard: later(() => import("./check-card.ts").then((m) => m.checkCard)),
  lookOver: later(() => import("./look-over.ts").then((m) => m.lookOverCard)),
  testCard: later(() => import("./test-card.ts").then((m) => m.testCard)),
  throttleMarks: later(() => import("./throttle-marks.ts").then((m) => m.throttleMarks)),
  fuelFlow: later(() => import("./fuel-flow.ts").then((m) => m.fuelFlow)),
  airPreview: later(() => import("./air/air-preview.ts").then((m) => m.airPreview)),
  heightChart: later(() => import("./air/height-chart.ts").then((m) => m.heightChart)),
  lastHere: later(() => import("./air/last-here.ts").then((m) => m.lastHere)),
  tripPlan: later(() => import("./air/trip-plan.ts").then((m) => m.tripPlan)),
  best: later(() => import("./best/best-setups.ts").then((m) => m.bestSetups)),
  drawer: later(() => import("./drawer/drawer-view.ts").then((m) => m.drawerView)),
  jetsWanted: later(() => import("./drawer/jets-wanted.ts").then((m) => m.jetsWanted)),
  ridingRange: later(() => import("./drawer/riding-range.ts").then((m) => m.ridingRange)),
  needleShape: later(() => import("./drawer/needle-shape.ts").then((m) => m.needleShape)),
  governs: governsFor,
  anatomy: later(() => import("./anatomy.ts").then((m) => m.anatomyFor)),
  change: later(() => import("./change/change-plan.ts").then((m) => m.changePlan)),
  ask: later(() => import("./ask.ts").then((m) => m.askFor)),
  compared: later(() => import("./compared.ts").then((m) => m.compared)),
  copyState,
  copyText: later(() => import("./copy/copy-text.ts").then((m) => m.copyText)),
  history: later(() => import("./history.ts").then((m) => m.historyOf)),
  orders: later(() => import("./orders/order-list.ts").then((m) => m.orderList)),
  order: later(() => import("./orders/order-view.ts").then((m) => m.orderView)),
  erased: later(() => import("./remove/erased.ts").then((m) => m.erased)),
  removable: later(() => import("./remove/removable.ts").then((m) => m.removable)),
  customers: later(() => import("./orders/customer-list.ts").then((m) => m.customerList)),
  photos: later(() => import("./photos/photos-of.ts").then((m) => m.photosOf)),
  photosNamed: later(() => import("./photos/photos-named.ts").then((m) => m.photosNamed)),
  readPiece: later(() => import("./copy/read-piece.ts").then((m) => m.readPiece)),
  sheet: later(() => import("./sheet/sheet.ts").then((m) => m.sheetOf)),
  soundEngine: later(() => import("./listen/sound-engine.ts").then((m) => m.soundEngine)),
  screwSweep: later(() => import("./listen/screw-sweep.ts").then((m) => m.screwSweep)),
  takeHeard: later(() => import("./listen/take-heard.ts").then((m) => m.takeHeard)),
  starting: later(() => import("./starting.ts").then((m) => m.starting)),
  trend: later(() => import("./trend.ts").then((m) => m.trendOf)),
  takeBack: later(() => import("./take-back.ts").then((m) => m.takeBack)),
} as const satisfies Readonly<Record<string, (state: EngineState, given: never) => unknown>>;

export type Question = keyof typeof ANSWERS;
export type ArgumentsOf<Q extends Question> = Parameters<(typeof ANSWERS)[Q]>[1];
export type AnswerOf<Q extends Question> = Awaited<ReturnType<(typeof ANSWERS)[Q]>>;
