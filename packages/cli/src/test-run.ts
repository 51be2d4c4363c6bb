import type { Io } from "./io.ts";
import { run } from "./run.ts";

/** What a command line printed, and its exit code. For tests. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly error: string;
}

export interface Given {
  readonly stdin?: string | readonly Uint8Array[];
  readonly unicode?: boolean;
  readonly colour?: boolean;
  readonly now?: number;
}

/** Runs a command line in this process, with the given text piped in. */
export async function runHere(argv: readonly string[], given: Given = {}): Promise<Ran> {
  const { stdin, unicode = true, colour = false, now = Date.UTC(2026, 4, 2, 12) } = given;
  let out = "";
  let error = "";
  const pieces = stdin === undefined ? [] : typeof stdin === "string" ? [stdin] : stdin;
  const io: Io = {
    stdin: (async function* () {
      yield* pieces;
    })(),
    stdinIsTerminal: stdin === undefined,
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
    width: 80,
    unicode,
    colour,
    now: () => now,
  };
  const code = await run(argv, io);
  return { code, out, error };
}

/** A record of a log in one line. */
export const line = (id: string, kind: string, body: object, bike: string | null = "mine", at = id): string =>
  JSON.stringify({
    id,
    kind,
    at: `2026-05-02T10:${at.slice(-2)}:00+02:00`,
    ...(bike === null ? {} : { bike }),
    body,
  });

/** A small log: a two-stroke that burbles at half throttle. */
export const LOG = [
  line("r10", "bike-described", {
    name: "Trail 250",
    engine: { strokes: 2, displacementCc: 249 },
    carburetor: { bore: { shape: "round", diameterMm: 36 }, screw: "air", jetNumbering: "bore" },
  }),
  line("r11", "setup-fitted", {
    main: { number: 175 },
    pilot: { number: 42 },
    needle: { marks: "N2K", grooves: 5 },
    clip: { groove: 4 },
    screw: { turnsOut: 1.5 },
    asFound: true,
  }),
  line("r12", "air-measured", { temperatureC: 18, heightM: 450 }, null),
  line("r13", "ride-reported", {
    reports: [
      { sign: "four-strokes-under-load", opening: "1/2" },
      { sign: "four-strokes-light-throttle", opening: "3/8" },
      { sign: "drops-straight-to-idle" },
      { sign: "pulls-clean-to-peak" },
    ],
  }),
  line("r14", "setup-fitted", { clip: { groove: 3 } }),
  line("r15", "ride-reported", {
    reports: [{ sign: "four-strokes-under-load", opening: "1/2" }],
    against: { felt: [{ opening: "1/2", felt: "better" }] },
  }),
].join("\n");
