export const home = {
  title: "Bikes",
  first: "Sets up a slide carburetor beside the bike, with no network.",
  setUp: "Set up my bike",
  example: "Look at an example shop",
  exampleIn: "The example shop is in.",
  away: "put away",
  drawer: "Drawer",
  start: "Starting point",
  more: "More",
  cc: (cc: number) => `${cc} cc`,
  strokes: (strokes: 2 | 4) => (strokes === 2 ? "two-stroke" : "four-stroke"),
};
