export const best = {
  title: "Which setup is best there?",
  lead: "Drag height and temperature to where it will be ridden. The list is weighed from all that was told of this bike, faults and doubt included.",
  height: "Height",
  temperature: "Temperature",
  from: "Parts to choose from",
  order: "Order",
  runs: "Runs best",
  quick: "Work counted",
  throttle: "Full throttle",
  safe: "Allowed",
  any: "Held back",
  top: {
    free: "Full throttle: not likely to be lean.",
    "seconds only": "Full throttle: a few seconds only, until it is proved.",
    "stay below 3/4": "May be lean on top: stay below 3/4.",
  },
  asFitted: "As fitted",
  nothingToDo: "Nothing to change.",
  keptAs: (place: number): string =>
    place === 1 ? "It is the best of them." : `It is number ${place} of the list.`,
  minutes: (minutes: string): string => `${minutes} minutes, proof included.`,
  toBuy: "To buy.",
  mixture: (opening: string, percent: number): string => {
    const side = percent > 0 ? "rich" : "lean";
    return Math.abs(percent) < 1 ? `${opening}: right` : `${opening}: ${Math.abs(percent)} % ${side}`;
  },
  searched: (count: string): string =>
    `${count} setups weighed. The percentages are the middle of what is likely.`,
  none: "Nothing here makes a lean full throttle unlikely in this air. Allow sizes sold, or take “Held back” and keep below 3/4 until the top is proved.",
  list: "Best first",
  show: (rest: number): string => `${rest} more`,
};
