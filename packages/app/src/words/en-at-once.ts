import { bike } from "./en/bike.ts";
import { fitted } from "./en/fitted.ts";
import { home } from "./en/home.ts";
import { kept, update } from "./en/kept.ts";
import { mixturePicture } from "./en/mixture-picture.ts";
import { right } from "./en/right.ts";
import { settings } from "./en/settings.ts";
import { step } from "./en/step.ts";

/** The English that a first visit can meet before anything else is loaded: the list, a bike and its next step. */
export const atOnce = {
  backup: kept,
  bike,
  fitted,
  home,
  pictures: mixturePicture,
  right,
  settings,
  step,
  update,
};
