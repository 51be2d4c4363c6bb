import { bike } from "./en/bike.ts";
import { fittedRows } from "./en/fitted-rows.ts";
import { home } from "./en/home.ts";
import { kept, update } from "./en/kept.ts";
import { languageChoice } from "./en/language-choice.ts";
import { mixturePicture } from "./en/mixture-picture.ts";
import { right } from "./en/right.ts";
import { step } from "./en/step.ts";

/** The English that a first visit can meet before anything else is loaded: the list, a bike and its next step. */
export const atOnce = {
  backup: kept,
  bike,
  fitted: fittedRows,
  home,
  pictures: mixturePicture,
  right,
  settings: languageChoice,
  step,
  update,
};
