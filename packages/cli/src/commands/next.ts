import { type AirState, accept, nextStep, type Outcome } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import type { Arguments } from "../arguments.ts";
import type { Answer, Command, Look } from "../command.ts";
import { AIR_FLAGS, airIsGiven, airOfFlags } from "../input/air-flags.ts";
import { BIKE_FLAG } from "../input/bike-flag.ts";
import { bikeOfLog } from "../input/bike-of-log.ts";
import type { Io } from "../io.ts";
import { nextJson } from "./next-json.ts";
import { nextText } from "./next-text.ts";

const MANUAL = `
Reads the log of a bike and tells the next thing to do: a check, a test, a change of
parts or a ride. It says why, what to expect, what would prove it wrong and how to
undo it. Do it, write down what happened as one more line, and ask again.

A log has one record a line. Type this into bike.jsonl:

{"id":"r1","kind":"bike-described","at":"2026-05-02T09:00:00+02:00","bike":"mine","body":{"name":"Trail 250","engine":{"strokes":2,"displacementCc":249},"carburetor":{"bore":{"shape":"round","diameterMm":36},"screw":"air","jetNumbering":"bore"}}}
{"id":"r2","kind":"setup-fitted","at":"2026-05-02T09:10:00+02:00","bike":"mine","body":{"main":{"number":175,"how":"read by eye"},"pilot":{"number":42,"how":"read by eye"},"needle":{"marks":"N2K","grooves":5},"clip":{"groove":3,"how":"read by eye"},"screw":{"turnsOut":1.5,"how":"measured"},"asFound":true}}
{"id":"r3","kind":"air-measured","at":"2026-05-02T09:30:00+02:00","body":{"temperatureC":18,"heightM":450}}
{"id":"r4","kind":"ride-reported","at":"2026-05-02T10:15:00+02:00","bike":"mine","body":{"reports":[{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"drops-straight-to-idle"},{"sign":"pulls-clean-to-peak"}],"words":"blubbers up the long hill"}}

Then: jetwright next bike.jsonl

Only the strokes of the engine are needed to begin. A part nobody knows is the word
"unknown". \`jetwright signs WORD\` finds the name of what you heard or felt.
With the air flags the step is for the air you will ride in, and not the last noted.
`;

export const next: Command = {
  name: "next",
  summary: "the next step for a bike, with its reasons",
  usage: ["jetwright next LOG [--bike ID]", "jetwright next LOG --temperature 28C --height 1200m"],
  manual: MANUAL,
  flags: {
    ...BIKE_FLAG,
    "one-at-a-time": { type: "switch", help: "Change one part at a time, and say what that costs" },
    ...AIR_FLAGS,
  },
  operands: [0, 1],
  run,
};

async function run(args: Arguments, io: Io, look: Look): Promise<Outcome<Answer>> {
  let air: AirState | undefined;
  if (airIsGiven(args)) {
    const given = airOfFlags(args, io.now());
    if (!given.ok) return given;
    air = given.value.air;
  }
  const of = await bikeOfLog(args.operands[0], args.text("bike"), io, air);
  if (!of.ok) return of;
  const { bike, problems } = of.value;
  const story = args.on("one-at-a-time") ? { ...bike, oneChangeAtATime: true } : bike;
  const advice = nextStep(story, english);
  if (!advice.ok) return advice;
  return accept({
    json: nextJson(of.value, advice.value),
    text: nextText(of.value, advice.value, air !== undefined, look),
    problems,
  });
}
