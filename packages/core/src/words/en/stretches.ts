/** What is noticed on a stretch of throttle: when it is right, too rich and too lean, told as sound and smoke. */
interface StretchWords {
  readonly right: string;
  readonly tooMuch: string;
  readonly tooLittle: string;
}
type Stretches = Readonly<Record<"bottom" | "middle" | "top", StretchWords>>;

const TWO_STROKE: Stretches = {
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

const FOUR_STROKE: Stretches = {
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

/** By strokes and stretch, as clauses that a sentence of a change goes on with. */
export const stretches = { two: TWO_STROKE, four: FOUR_STROKE };
