import type { Opening } from "../units/quantity.ts";

/** The three stretches of throttle a technician speaks of when he says where something shows. */
export type Band = "bottom" | "middle" | "top";

export const bandOf = (opening: Opening): Band =>
  opening <= 0.1875 ? "bottom" : opening < 0.75 ? "middle" : "top";

interface BandWords {
  /** What you notice when this stretch is right. */
  readonly right: string;
  /** What you notice when it is now too rich, told as sound and smoke. */
  readonly tooMuch: string;
  readonly tooLittle: string;
}

const TWO_STROKE: Readonly<Record<Band, BandWords>> = {
  bottom: {
    right: "it drops straight to idle when you close the throttle, and answers at once from idle",
    tooMuch: "it dives below idle when you close the throttle, or gargles and smokes on a quick opening",
    tooLittle:
      "the revs hang when you close the throttle, or it gasps hollow with no smoke on a quick opening",
  },
  middle: {
    right: "it pulls cleanly from 1/4 to 1/2, uphill too",
    tooMuch: "it burbles under load at part throttle: half the beat, soft and uneven",
    tooLittle: "it jerks at a steady grip, feels hollow, or pings on the roll-on",
  },
  top: {
    right: "it pulls clean to the top, and just starts to burble when you roll back to about 80 %",
    tooMuch: "it goes flat and rough on top and will not rev out",
    tooLittle:
      "it picks up when you roll back a little from full, fades, or sounds sharp: then shut off gently",
  },
};

const FOUR_STROKE: Readonly<Record<Band, BandWords>> = {
  bottom: {
    right: TWO_STROKE.bottom.right,
    tooMuch: "it dives below idle when you close the throttle, or answers lazily and smells of petrol",
    tooLittle: "the revs hang when you close the throttle, or it pops on the overrun",
  },
  middle: {
    ...TWO_STROKE.middle,
    tooMuch: "it is lazy and dull under load and smokes black",
  },
  top: {
    right: "it pulls clean to the top",
    tooMuch: TWO_STROKE.top.tooMuch,
    tooLittle: TWO_STROKE.top.tooLittle,
  },
};

export const bandWords = (band: Band, strokes: 2 | 4): BandWords =>
  (strokes === 2 ? TWO_STROKE : FOUR_STROKE)[band];
