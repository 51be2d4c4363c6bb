import type { Words } from "./en.ts";
import { air } from "./es/air.ts";
import { ask } from "./es/ask.ts";
import { backup, take, update } from "./es/backup.ts";
import { best } from "./es/best.ts";
import { bike } from "./es/bike.ts";
import { cards } from "./es/cards.ts";
import { change } from "./es/change.ts";
import { describe } from "./es/describe.ts";
import { drawer } from "./es/drawer.ts";
import { fitted } from "./es/fitted.ts";
import { history } from "./es/history.ts";
import { home } from "./es/home.ts";
import { listen } from "./es/listen.ts";
import { lookOver } from "./es/look-over.ts";
import { newBike } from "./es/new-bike.ts";
import { orders } from "./es/orders.ts";
import { photos } from "./es/photos.ts";
import { pictures } from "./es/pictures.ts";
import { proof } from "./es/proof.ts";
import { report } from "./es/report.ts";
import { right } from "./es/right.ts";
import { settings } from "./es/settings.ts";
import { sheet } from "./es/sheet.ts";
import { start } from "./es/start.ts";
import { step } from "./es/step.ts";
import { sweep } from "./es/sweep.ts";
/** Every text of the app in Spanish. Not yet checked by a native speaker who works on engines. */
export const es: Words = {
  change,
  describe,
  air,
  drawer,
  cards,
  best,
  bike,
  fitted,
  newBike,
  orders,
  settings,
  step,
  proof,
  report,
  right,
  home,
  photos,
  pictures,
  ask,
  sheet,
  history,
  listen,
  lookOver,
  start,
  sweep,
  backup,
  take,
  update,
};
