import { air } from "./en/air.ts";
import { ask } from "./en/ask.ts";
import { backup, take, update } from "./en/backup.ts";
import { best } from "./en/best.ts";
import { bike } from "./en/bike.ts";
import { cards } from "./en/cards.ts";
import { change } from "./en/change.ts";
import { describe } from "./en/describe.ts";
import { drawer } from "./en/drawer.ts";
import { fitted } from "./en/fitted.ts";
import { history } from "./en/history.ts";
import { home } from "./en/home.ts";
import { listen } from "./en/listen.ts";
import { newBike } from "./en/new-bike.ts";
import { pictures } from "./en/pictures.ts";
import { report } from "./en/report.ts";
import { right } from "./en/right.ts";
import { settings } from "./en/settings.ts";
import { sheet } from "./en/sheet.ts";
import { start } from "./en/start.ts";
import { step } from "./en/step.ts";
import type { Told } from "./told.ts";

/** Every text of the app, by screen. English is the measure: the other languages must have each entry. */
export const en = {
  change,
  describe,
  air,
  drawer,
  cards,
  best,
  bike,
  fitted,
  newBike,
  right,
  settings,
  step,
  report,
  home,
  pictures,
  ask,
  sheet,
  history,
  listen,
  start,
  backup,
  take,
  update,
};

export type Words = Told<typeof en>;
