import { air } from "./de/air.ts";
import { ask } from "./de/ask.ts";
import { backup, take, update } from "./de/backup.ts";
import { best } from "./de/best.ts";
import { bike } from "./de/bike.ts";
import { cards } from "./de/cards.ts";
import { change } from "./de/change.ts";
import { describe } from "./de/describe.ts";
import { drawer } from "./de/drawer.ts";
import { fitted } from "./de/fitted.ts";
import { history } from "./de/history.ts";
import { home } from "./de/home.ts";
import { listen } from "./de/listen.ts";
import { lookOver } from "./de/look-over.ts";
import { newBike } from "./de/new-bike.ts";
import { orders } from "./de/orders.ts";
import { photos } from "./de/photos.ts";
import { pictures } from "./de/pictures.ts";
import { proof } from "./de/proof.ts";
import { report } from "./de/report.ts";
import { right } from "./de/right.ts";
import { settings } from "./de/settings.ts";
import { sheet } from "./de/sheet.ts";
import { start } from "./de/start.ts";
import { step } from "./de/step.ts";
import { sweep } from "./de/sweep.ts";
import type { Words } from "./en.ts";
/** Every text of the app in German. Not yet checked by a native speaker who works on engines. */
export const de: Words = {
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
