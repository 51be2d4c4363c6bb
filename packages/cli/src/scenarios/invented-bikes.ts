// The first lines of the scenarios' logs: invented bikes as found, in known air, with jets at hand.

const stock = (part: "main" | "pilot", numbers: readonly number[]): string =>
  numbers.map((number) => `{"part":"${part}","number":${number},"numbering":"bore","count":1}`).join(",");

/** Jets at hand: mains 160 to 190, pilots 36 to 50. */
const DRAWER = `{"id":"a5","kind":"parts-counted","at":"2026-05-02T08:04:00Z","body":{"parts":[${stock("main", [160, 165, 167.5, 170, 172.5, 177.5, 180, 182.5, 185, 190])},${stock("pilot", [36, 38, 40, 45, 48, 50])}]}}`;

const PARTS = `"main":{"number":175},"pilot":{"number":42},"needle":{"marks":"N1","grooves":5,"groovePitchMm":0.9,"straightDiameterMm":2.52,"tapers":[{"startMm":39.8,"includedAngleDeg":1.5},{"startMm":54.8,"includedAngleDeg":3}]},"clip":{"groove":3},"needleJet":{"boreMm":2.7},"slide":{"cutawayMm":3.5},"screw":{"turnsOut":1.5}`;

/** "fern": a two-stroke 250 with an air screw, near sea level on 5 % ethanol. */
export const FERN = `
{"id":"a1","kind":"bike-described","at":"2026-05-02T08:00:00Z","bike":"fern","body":{"name":"Fern 250","engine":{"strokes":2,"displacementCc":249},"carburetor":{"bore":{"shape":"round","diameterMm":36},"screw":"air","nozzle":"primary","seatToJetMm":30,"jetNumbering":"bore"}}}
{"id":"a2","kind":"fuel-used","at":"2026-05-02T08:01:00Z","bike":"fern","body":{"ethanolPercent":5,"oil":"40:1"}}
{"id":"a3","kind":"air-measured","at":"2026-05-02T08:02:00Z","bike":"fern","body":{"temperatureC":15,"stationPressureHpa":1012,"humidityPercent":60,"heightM":10}}
{"id":"a4","kind":"setup-fitted","at":"2026-05-02T08:03:00Z","bike":"fern","body":{"asFound":true,${PARTS}}}
${DRAWER}
`;

/** "heron": a four-stroke 250 with a fuel screw and an accelerator pump, otherwise as "fern". */
export const HERON = `
{"id":"a1","kind":"bike-described","at":"2026-05-02T08:00:00Z","bike":"heron","body":{"name":"Heron 250","engine":{"strokes":4,"displacementCc":249,"acceleratorPump":true},"carburetor":{"bore":{"shape":"round","diameterMm":36},"screw":"fuel","nozzle":"bleed","seatToJetMm":30,"jetNumbering":"bore"}}}
{"id":"a2","kind":"fuel-used","at":"2026-05-02T08:01:00Z","bike":"heron","body":{"ethanolPercent":5,"oil":"none"}}
{"id":"a3","kind":"air-measured","at":"2026-05-02T08:02:00Z","bike":"heron","body":{"temperatureC":15,"stationPressureHpa":1012,"humidityPercent":60,"heightM":10}}
{"id":"a4","kind":"setup-fitted","at":"2026-05-02T08:03:00Z","bike":"heron","body":{"asFound":true,${PARTS}}}
${DRAWER}
`;

/** A report of a bike that is right from closed to full. */
export const ALL_RIGHT = `{"sign":"idles-steadily"},{"sign":"drops-straight-to-idle"},{"sign":"answers-crisply"},{"sign":"pulls-smoothly"},{"sign":"pulls-clean-to-peak"},{"sign":"four-strokes-at-about-80-percent"}`;

/** Lines of somebody who has looked the bike over, the fuel, the boots and the spark apart, and found all sound. */
export const lookedOver = (bike: string): string =>
  ["air-filter", "choke-plunger", "slide-snap-and-cable", "head-and-plug-tight"]
    .map(
      (check, i) =>
        `\n{"id":"look-${i}","kind":"check-done","at":"2026-05-02T08:55:00Z","bike":"${bike}","body":{"check":"${check}","found":"sound"}}`,
    )
    .join("");
