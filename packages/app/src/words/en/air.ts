const whole = (percent: number): string => Math.abs(percent).toFixed(0);
const side = (percent: number): string => (percent >= 0 ? "richer" : "leaner");

export const air = {
  title: "What air is it?",
  here: {
    question: "What did we run last time here?",
    title: "Last time here",
    titleAt: (place: string): string => `Last time at ${place}`,
    near: (temperature: string, height: string): string =>
      `Marked as right within 10 °C and 300 m of ${temperature}, ${height}.`,
    none: "Nothing was marked as right in such air yet.",
    noAir: "Nobody has noted the air of now.",
    own: "This bike",
    now: (denser: number, richer: number | null): string =>
      `${Math.abs(denser) < 0.5 ? "The air of now is as dense" : `The air of now is ${whole(denser)} % ${denser > 0 ? "denser" : "thinner"}`}${richer === null ? "" : Math.abs(richer) < 0.5 ? ": it would run the same at full throttle" : `: it would run ${whole(richer)} % ${side(richer)} at full throttle`}.`,
  },
  way: "How you know it",
  byHand: "Instruments",
  byReport: "Report",
  byHeight: "Height only",
  temperature: "Temperature in the shade",
  temperatureHere: "Temperature at your place, if you have it",
  height: "Height where you ride",
  pressure: "Pressure",
  pressureKind: "What the pressure is",
  station: "Read on a barometer at the place",
  stationHint: "A phone's own barometer counts. Near 1013 hPa only at the sea.",
  seaLevel: "From a forecast or an airfield",
  seaLevelHint: "Carried down to sea level: close to 1013 hPa everywhere. It needs the height.",
  noPressure: "Not known",
  noPressureHint: "The height must do; the band gets wider.",
  humidityKind: "Humidity",
  noHumidity: "Not known",
  percent: "Per cent",
  dewPoint: "Dew point",
  humidity: "Humidity",
  report: "The report, as you copied it",
  reportHint: "A METAR or SPECI line. It is kept as you paste it.",
  reportExample: "METAR ... 24004KT 9999 17/09 Q1018",
  reportHeights: "The height of your place counts, not the station's: the pressure is carried there.",
  stationHeight: "Height of the station",
  stationHeightHint: "Leave it empty if you do not know; the band gets wider.",
  heightOnly: "The weather moves the pressure at a height by 1 % or more, so this way the band is wider.",
  notANumber: "That is no number I can read. A unit may stand behind it: 75F, 5000 ft, 29.92 inHg.",
  readTitle: "Read from the report",
  readStation: "Station",
  readTime: "Made",
  readTemperature: "Temperature",
  readDewPoint: "Dew point",
  readAltimeter: "Pressure, sea level",
  readStationPressure: "Pressure at the station",
  notSaid: "not in it",
  time: (day: number, hour: number, minute: number): string =>
    `day ${day}, ${String(hour).padStart(2, "0")}:${String(minute).padStart(2, "0")} UTC`,
  age: (minutes: number): string =>
    minutes < 90
      ? `${Math.max(0, minutes)} minutes ago`
      : minutes < 48 * 60
        ? `${Math.round(minutes / 60)} hours ago`
        : `${Math.round(minutes / 1440)} days ago`,
  densityTitle: "This air",
  denser: (percent: number): string =>
    Math.abs(percent) < 0.5
      ? "As dense as standard air at sea level, for the engine."
      : `${whole(percent)} % ${percent < 0 ? "thinner" : "denser"} than standard air at sea level, for the engine.`,
  doubt: (percent: number): string =>
    `Give or take ${percent < 1 ? percent.toFixed(1) : percent.toFixed(0)} %.`,
  like: (height: string): string => `Like ${height} in standard air.`,
  read: (temperature: string, pressure: string, humidity: number): string =>
    `Taken as ${temperature}, ${pressure} at the place, humidity ${humidity.toFixed(0)} %.`,
  effectTitle: "What it does to the setup",
  fromMarked: (day: string, temperature: string, height: string): string =>
    `Against ${day}, ${temperature} at ${height}, where this setup was marked as right. Nothing changed:`,
  fromNoted: (temperature: string, height: string): string =>
    `Against the air last noted, ${temperature} at ${height}. Nothing changed:`,
  effect: (percent: number): string =>
    Math.abs(percent) < 0.5 ? "the same" : `${whole(percent)} % ${side(percent)}`,
  opening: "Throttle",
  mixture: "Mixture",
  mendSeaLevel: "It is a sea-level pressure",
  mendStation: "It was read at the place",
  keep: "Keep this air",
  kept: "Kept. The advice now counts with this air.",
  undo: "Undo",
  mistaken: "noted by mistake",
  bike: "Bike",
  source: "Main jets to choose from",
  sold: "Sizes sold",
  drawer: "Only what I have",
  trip: {
    title: "One ride, several heights",
    lead: "The lowest, coldest place decides the main jet. Put in the coldest you expect at each.",
    from: (temperature: string, height: string): string =>
      `Counted from ${temperature} at ${height}, where the setup is taken to be right.`,
    place: "Place",
    add: "Another place",
    remove: (name: string): string => `Take out ${name}`,
    removed: (name: string): string => `${name} taken out.`,
    unnamed: (n: number): string => `Place ${n}`,
    temperature: "Coldest there",
    height: "Height",
    safe: (main: number): string => `With main jet ${main}, full throttle is lean nowhere`,
    stays: "That is what is fitted: nothing to change.",
    change: (from: number, to: number): string =>
      to > from
        ? `Fitted is ${from}: change it to ${to} before you go. On the ${from} it runs lean.`
        : `Fitted is ${from}: safe as well, only richer everywhere.`,
    notOwned: (main: number): string => `A ${main} is not in the drawer.`,
    decides: (name: string, height: string, temperature: string): string =>
      `${name} decides: ${height} at ${temperature} is the densest air of the ride.`,
    none: "No main jet at hand is big enough",
    feels: "What each place will feel like",
    feel: (percent: number): string =>
      Math.abs(percent) < 0.5 ? "right" : `${whole(percent)} % ${percent > 0 ? "rich" : "lean"}`,
    stop: (half: string, full: string): string => `${half} at 1/2, ${full} at full throttle.`,
    would: (main: number): string => `A ${main} would suit this place alone.`,
    back: (safe: number, below: string | null): string =>
      below === null
        ? `Refit the ${safe} before you ride lower or where it is colder.`
        : `Refit the ${safe} before you ride below ${below}, sooner if it turns colder.`,
    keep: "Keep this for the way back",
    kept: "Kept as a note on this bike.",
    note: (safe: number, decides: string): string => `Ride plan: main jet ${safe}. ${decides}`,
    tooFew: "Fill in a height and a temperature for at least one place.",
    unread: "Not counted yet: the height or the temperature cannot be read.",
  },
  chart: {
    title: "By height and temperature",
    lead: "Main jet and clip that keep this setup right.",
    fromMarked: (day: string, temperature: string, height: string): string =>
      `Counted from ${day}, ${temperature} at ${height}, where it was marked as right.`,
    fromNoted: (temperature: string, height: string): string =>
      `Counted from the air last noted, ${temperature} at ${height}: it is taken to be right there.`,
    mendFirst: "Not right yet? Mend it first",
    cell: (main: number | null, clip: number | null): string =>
      `${main ?? "–"}${clip === null ? "" : ` / ${clip}`}`,
    legend:
      "Main jet / clip groove, counted from the top, on the rich side. The framed field is nearest to the air counted from.",
    noneRich: "A dash: no main jet of the choice is rich enough there.",
    unknownMain: "The main jet fitted is not known, so none can be told. Read the number on it.",
    corner: "Height",
    here: ", counted from here",
  },
};
