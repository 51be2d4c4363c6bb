import type { FaultId } from "../belief/catalogue.ts";
import type { Check } from "./catalogue.ts";

// Chances of finding, false alarms and minutes are estimates throughout, except that the pressure test and the spray
// test carry the figures of rows T11 and T10 of the signs table. Figures in the steps (words/en/checks.ts) name
// the range their sources give.

const FIGURES = "chances and minutes [estimate]";

/** Looks and measurements that find a mechanical fault, the quick ones first. */
export const CHECKS: readonly Check[] = [
  {
    id: "look-at-boots-and-clamps",
    minutes: 5,
    finds: { "air-leak": 0.45 },
    falseAlarm: 0.04,
    cautions: ["hot-parts"],
    strokes: "both",
    source: `an oil maker's page on leak testing: boots are the commonest place [read]; ${FIGURES}`,
  },
  {
    id: "idle-stop",
    minutes: 4,
    finds: { "idle-stop": 0.9 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "fumes", "hot-parts"],
    strokes: "both",
    source: `idle range from memory; method: a carburetor maker's setting guide [read]; ${FIGURES}`,
  },
  {
    id: "tap-and-vents",
    minutes: 5,
    finds: { "fuel-supply": 0.5 },
    falseAlarm: 0.04,
    cautions: ["petrol-vapour", "hot-parts"],
    strokes: "both",
    source: `an aircraft kit maker's service bulletin on vents [read]; ${FIGURES}`,
  },
  {
    id: "overflow-drip",
    minutes: 4,
    finds: { "float-valve": 0.8, "float-level": 0.25 },
    falseAlarm: 0.03,
    cautions: ["petrol-vapour", "spilled-fuel"],
    strokes: "both",
    source: `a maker's manual of a 125 motocrosser: replace valve and seat together [read]; ${FIGURES}`,
  },
  {
    id: "air-filter",
    minutes: 5,
    finds: { "air-filter": 0.95 },
    falseAlarm: 0.03,
    cautions: ["waste"],
    strokes: "both",
    source: `mobilemotorcyclemechanic.blogspot 2011: a hole in the filter [read]; ${FIGURES}`,
  },
  {
    id: "slide-snap-and-cable",
    minutes: 5,
    finds: { "slide-or-cable": 0.85 },
    falseAlarm: 0.03,
    cautions: ["makers-manual", "fuel-off-first", "slide-snap-before-start", "runaway"],
    strokes: "both",
    source: `trialscentral.com 63536, a carburetor maker's setting guide: 1 mm [read]; grip play from memory; ${FIGURES}`,
  },
  {
    id: "fresh-fuel-and-oil",
    minutes: 12,
    finds: { "fuel-or-oil-wrong": 0.85 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "fuel-off-first", "petrol-vapour", "spilled-fuel", "waste"],
    strokes: "both",
    source: `the month from memory; ${FIGURES}`,
  },
  {
    id: "fuel-flow",
    minutes: 8,
    finds: { "fuel-supply": 0.85 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "petrol-vapour", "spilled-fuel"],
    strokes: "both",
    source: `threshold 250 ml/min [estimate]; demand 150 to 200 ml/min from memory; ${FIGURES}`,
  },
  {
    id: "choke-plunger",
    minutes: 10,
    finds: { "choke-not-seating": 0.85 },
    falseAlarm: 0.05,
    cautions: ["fuel-off-first", "petrol-vapour"],
    strokes: "both",
    source: `rider reports, cases 22 and 53; ${FIGURES}`,
  },
  {
    id: "spark-and-plug",
    minutes: 10,
    finds: { ignition: 0.6, "plug-heat-range": 0.85 },
    falseAlarm: 0.06,
    cautions: ["makers-manual", "battery", "petrol-vapour", "hot-parts"],
    strokes: "both",
    source: `a maker's manual on the spark gap [read]; ${FIGURES}`,
  },
  {
    id: "ignition-timing",
    minutes: 35,
    finds: { ignition: 0.5 },
    falseAlarm: 0.06,
    cautions: ["makers-manual", "battery", "fumes"],
    strokes: "both",
    source: `memory; ${FIGURES}`,
  },
  {
    id: "head-and-plug-tight",
    minutes: 12,
    finds: { "loose-head": 0.85 },
    falseAlarm: 0.03,
    cautions: ["makers-manual", "hot-parts"],
    strokes: "both",
    source: `rider reports, cases 42 (loose plug) and 52 (loose head); ${FIGURES}`,
  },
  {
    id: "cooling",
    minutes: 12,
    finds: { cooling: 0.8, "loose-head": 0.3 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "hot-parts", "fumes", "waste"],
    strokes: "both",
    source: `memory; ${FIGURES}`,
  },
  {
    id: "compression",
    minutes: 12,
    finds: { compression: 0.85, "valve-clearance": 0.35, "loose-head": 0.35 },
    falseAlarm: 0.06,
    cautions: ["makers-manual", "battery", "petrol-vapour", "hot-parts"],
    strokes: "both",
    source: `figures: a magazine article on keeping a two-stroke alive [read]; an engine builder: not a leak test [read]; ${FIGURES}`,
  },
  {
    id: "gearbox-oil-and-smoke",
    minutes: 12,
    finds: { "gearbox-side-seal": 0.7 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "fumes", "hot-parts", "waste"],
    strokes: "two",
    source: `an oil maker's page on leak testing: more smoke with that seal leaking [read]; ${FIGURES}`,
  },
  {
    id: "clean-pilot",
    minutes: 25,
    finds: { "blocked-pilot": 0.9 },
    falseAlarm: 0.06,
    cautions: [
      "makers-manual",
      "fuel-off-first",
      "petrol-vapour",
      "eyes-and-skin",
      "never-wire-or-drill",
      "slide-snap-before-start",
      "waste",
    ],
    strokes: "both",
    source: `a maker's manual of a 125 motocrosser [read]; tools: common practice, no source; ${FIGURES}`,
  },
  {
    id: "float-height",
    minutes: 25,
    finds: { "float-level": 0.9, "float-valve": 0.5 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "fuel-off-first", "petrol-vapour", "spilled-fuel", "slide-snap-before-start"],
    strokes: "both",
    source: `method from memory; valve with seat: a maker's manual [read]; ${FIGURES}`,
  },
  {
    id: "measure-needle-and-jet",
    minutes: 30,
    finds: { "worn-needle-and-jet": 0.85 },
    falseAlarm: 0.08,
    cautions: ["makers-manual", "fuel-off-first", "petrol-vapour", "slide-snap-before-start"],
    strokes: "both",
    source: `wear goes to more fuel: oppermann-einbeck.de [read]; 0.01 mm worth 3 to 5 % by our own metering model; ${FIGURES}`,
  },
  {
    id: "reeds",
    minutes: 30,
    finds: { reed: 0.85 },
    falseAlarm: 0.07,
    cautions: ["makers-manual", "fuel-off-first", "petrol-vapour", "slide-snap-before-start"],
    strokes: "two",
    source: `memory; ${FIGURES}`,
  },
  {
    id: "exhaust-and-silencer",
    minutes: 25,
    finds: { "exhaust-blocked": 0.8 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "hot-parts", "noise", "waste", "law"],
    strokes: "both",
    source: `memory; ${FIGURES}`,
  },
  {
    id: "power-valve",
    minutes: 25,
    finds: { "power-valve": 0.85 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "hot-parts", "fumes", "free-revving"],
    strokes: "two",
    source: `memory; ${FIGURES}`,
  },
  {
    id: "spray-joints",
    minutes: 10,
    finds: { "air-leak": 0.7 },
    falseAlarm: 0.03,
    cautions: ["spray-fire", "fumes", "hot-parts", "petrol-vapour"],
    strokes: "both",
    source:
      "signs table row T10; rider report, case 3; chances [estimate]; the revs of a sound engine rarely change",
  },
  {
    id: "pressure-test",
    minutes: 45,
    finds: { "air-leak": 0.95, "gearbox-side-seal": 0.8, "loose-head": 0.5 },
    falseAlarm: 0.02,
    cautions: ["makers-manual", "low-pressure-only", "fuel-off-first", "hand-over"],
    strokes: "two",
    source:
      "signs table row T11; groupk.com, andrewburton.co.uk, 2t-racelab.com, scooterlab.uk on leak tests [read]; 6 psi for 6 minutes, 1 psi a minute from memory; chances [estimate]",
  },
  {
    id: "pump-timing",
    minutes: 20,
    finds: { "accelerator-pump": 0.85 },
    falseAlarm: 0.05,
    cautions: ["makers-manual", "petrol-vapour", "eyes-and-skin", "slide-snap-before-start"],
    strokes: "four",
    source: `mydirtbike.com, dieseltwitch.com on accelerator pumps [read]; ${FIGURES}`,
  },
  {
    id: "valve-clearance",
    minutes: 60,
    finds: { "valve-clearance": 0.95 },
    falseAlarm: 0.03,
    cautions: ["makers-manual", "hot-parts", "hand-over"],
    strokes: "four",
    source: `dirtbikeempire.com on valves [read]; ${FIGURES}`,
  },
];

const byId = new Map<string, Check>(CHECKS.map((check) => [check.id, check]));

/** The check of that id, or undefined for a name the catalogue does not know. */
export function checkById(id: string): Check | undefined {
  return byId.get(id);
}

/** A check that finds a fault less often than this is no look for it. */
const LOOKS_FOR_IT = 0.4;

/** True when that check finds that fault often enough to be a look for it. */
export const looksFor = ({ finds }: Check, fault: FaultId): boolean => (finds[fault] ?? 0) >= LOOKS_FOR_IT;
