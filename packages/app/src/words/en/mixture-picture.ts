export type Governor = "pilot" | "slide" | "needle" | "main";

const PARTS: Readonly<Record<Governor, string>> = {
  pilot: "pilot",
  slide: "slide",
  needle: "needle",
  main: "main jet",
};

const amount = (percent: number): string => {
  const whole = Math.round(percent);
  if (whole === 0) return "right";
  return whole > 0 ? `${whole} % rich` : `${-whole} % lean`;
};

/** What the picture of the mixture says: it is there at once. */
export const mixturePicture = {
  rich: "rich",
  lean: "lean",
  right: "right",
  amount,
  opening: {
    closed: "closed",
    "1/8": "⅛",
    "1/4": "¼",
    "1/2": "½",
    "3/4": "¾",
    full: "full",
  } as Readonly<Record<string, string>>,
  spokenOpening: (name: string) =>
    name === "closed" ? "Throttle closed" : name === "full" ? "Full throttle" : `At ${name} throttle`,
  parts: PARTS,
  mixture: {
    label: "Mixture against throttle opening",
    hint: "Touch the picture, or use the arrow keys, to read it.",
    now: "now",
    after: "after",
    read: (opening: string, now: number, low: number, high: number) =>
      `${opening}: ${amount(now)}, likely between ${amount(low)} and ${amount(high)}.`,
    readAfter: (after: number) => `After the change: ${amount(after)}.`,
    governs: (part: Governor) => `Here the ${PARTS[part]} has most of the say.`,
    column: { opening: "Throttle", now: "Mixture now", between: "Likely between", after: "After the change" },
    between: (low: number, high: number) => `${amount(low)} and ${amount(high)}`,
    throttle: "throttle",
  },
};
