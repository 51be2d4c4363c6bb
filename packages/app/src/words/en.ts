import { air } from "./en/air.ts";
import { ask } from "./en/ask.ts";
import { backup, take } from "./en/backup.ts";
import { best } from "./en/best.ts";
import { cards } from "./en/cards.ts";
import { change } from "./en/change.ts";
import { describe } from "./en/describe.ts";
import { drawer } from "./en/drawer.ts";
import { fitted } from "./en/fitted.ts";
import { history } from "./en/history.ts";
import { listen } from "./en/listen.ts";
import { lookOver } from "./en/look-over.ts";
import { newBike } from "./en/new-bike.ts";
import { orders } from "./en/orders.ts";
import { photos } from "./en/photos.ts";
import { pictures } from "./en/pictures.ts";
import { proof } from "./en/proof.ts";
import { report } from "./en/report.ts";
import { settings } from "./en/settings.ts";
import { sheet } from "./en/sheet.ts";
import { start } from "./en/start.ts";
import { sweep } from "./en/sweep.ts";
import { atOnce } from "./en-at-once.ts";
import type { Told } from "./told.ts";

/** Every text of the app, by screen. English is the measure: the other languages must have each entry. */
export const en = {
  ...atOnce,
  change,
  describe,
  air,
  drawer,
  fitted,
  cards,
  best,
  newBike,
  orders,
  photos,
  pictures,
  proof,
  report,
  ask,
  backup,
  take,
  settings,
  sheet,
  history,
  listen,
  lookOver,
  start,
  sweep,
};

export type Words = Told<typeof en>;
