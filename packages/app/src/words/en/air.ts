const side = (percent: number): string => (percent >= 0 ? "richer" : "leaner");

export const air = {
  title: "What air is it?",
  way: "How you know it",
  byHand: "Instruments",
  byReport: "Weather report",
  byHeight: "Height only",
  temperature: "Temperature in the shade",
  height: "Height where you ride",
  pressure: "Pressure",
  pressureKind: "What the pressure is",
  station: "Read on a barometer at the place",
  seaLevel: "From a forecast or an airfield (sea level)",
  noPressure: "Not known: the height must do",
  humidity: "Humidity",
  humidityHint: "Per cent. Leave it empty if you do not know; the band gets wider.",
  report: "The report, as you copied it",
  reportHint: "A METAR or SPECI line. It is kept as you paste it.",
  reportExample: "METAR ... 24004KT 9999 17/09 Q1018",
  unit: (unit: string): string => unit,
  notANumber: "That is no number I can read. A unit may stand behind it: 75F, 5000 ft, 29.92 inHg.",
  denser: (percent: number): string =>
    Math.abs(percent) < 0.5
      ? "As dense as standard air at sea level, for the engine."
      : `${Math.abs(percent).toFixed(0)} % ${percent < 0 ? "thinner" : "denser"} than standard air at sea level, for the engine.`,
  doubt: (percent: number): string =>
    `Give or take ${percent < 1 ? percent.toFixed(1) : percent.toFixed(0)} %.`,
  like: (height: string): string => `Like ${height} in standard air.`,
  read: (temperature: string, pressure: string, humidity: number): string =>
    `Read as ${temperature}, ${pressure}, humidity ${humidity.toFixed(0)} %.`,
  effectTitle: "What it does to the setup",
  effect: (percent: number): string =>
    Math.abs(percent) < 0.5
      ? "About the same as in the air last noted."
      : `About ${Math.abs(percent).toFixed(0)} % ${side(percent)} than in the air last noted, with nothing changed.`,
  mend: "It is a sea-level pressure",
  keep: "Keep this air",
  kept: "Kept. The advice now counts with this air.",
  undo: "Undo",
  undone: "Taken back.",
  mistaken: "noted by mistake",
  bike: "Bike",
  trip: {
    title: "One ride, several heights",
    lead: "The lowest, coldest place decides the main jet. Put in the coldest you expect at each.",
    place: "Place",
    add: "Another place",
    remove: (name: string): string => `Take out ${name}`,
    unnamed: (n: number): string => `Place ${n}`,
    safe: (main: number): string => `Main jet ${main} is lean nowhere on this ride`,
    stays: "That is what is fitted: nothing to change.",
    change: (from: number, to: number): string => `Fitted is ${from}: change it to ${to} before you go.`,
    decides: (name: string): string => `${name} decides: the air is densest there.`,
    none: "No size is big enough: the needle holds it back, or it cannot be bought.",
    feel: (percent: number): string =>
      Math.abs(percent) < 1 ? "right" : `${Math.abs(percent).toFixed(0)} % ${percent > 0 ? "rich" : "lean"}`,
    half: "1/2",
    full: "full",
    would: (main: number, back: string | null): string =>
      back === null
        ? `A ${main} would suit this place alone. Put the safe one back before you ride lower or where it is colder.`
        : `A ${main} would suit this place alone. Put the safe one back before you go below ${back}.`,
    back: "The way back",
    keep: "Keep this plan as a note",
    kept: "Kept as a note on this bike.",
    note: (safe: number, decides: string): string => `Ride plan: main jet ${safe}, decided by ${decides}.`,
    tooFew: "Fill in a height and a temperature for at least one place.",
  },
  chart: {
    title: "By height and temperature",
    lead: "Main jet and clip that put this setup right, counted from the air it last ran right in.",
    cell: (main: number | null, clip: number | null): string =>
      `${main ?? "?"}${clip === null ? "" : ` / ${clip}`}`,
    legend: "Main jet / clip groove from the top. The framed field is the air last noted.",
    corner: "Height",
    here: "air last noted",
  },
};
