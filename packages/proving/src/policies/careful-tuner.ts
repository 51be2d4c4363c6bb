import { testById } from "@jetwright/core";
import { stepped } from "../truth/sizes.ts";
import { ride } from "../world/report-of.ts";
import { tryTest } from "../world/try-test.ts";
import type { World } from "../world/world.ts";
import { mayGoOn, type Policy } from "./policy.ts";
import { chartStep, lookAndMend, tryOut } from "./steps.ts";
import { CHECK_FIRST, complaints, fitsStrokes } from "./symptoms.ts";

/** Looks made before any jet: fuel, filter, boots, cable, choke, flow, plug, head, compression. Common practice, no source. */
const GATE = [
  "air-filter",
  "look-at-boots-and-clamps",
  "slide-snap-and-cable",
  "tap-and-vents",
  "overflow-drip",
  "fuel-flow",
  "choke-plunger",
  "spark-and-plug",
  "head-and-plug-tight",
  "compression",
];

/**
 * The routine of the books: mechanical gate, a main jet that is surely rich, pilot by the screw, needle by riding,
 * main down to right, pilot again. One step at a time, better or worse.
 */
export const carefulTuner: Policy = {
  name: "careful tuner",
  words: "the careful workshop routine",
  work(world) {
    const { strokes } = world.drawn.bike.engine;
    if (Object.values(world.written).some((part) => part === null)) world.readParts();
    let report = ride(world, "free");
    const looked = new Set<string>(GATE);
    const found = world.lookOver(GATE).flatMap(({ fault }) => (fault === null ? [] : [fault]));
    for (const fault of new Set(found)) world.mend(fault);
    const follow = (): void => {
      for (const { sign, seen } of report.said) {
        for (const check of seen ? (CHECK_FIRST[sign] ?? []) : []) {
          if (looked.has(check) || !fitsStrokes(check, strokes)) continue;
          looked.add(check);
          lookAndMend(world, check);
        }
      }
    };
    follow();
    const { numbering } = world.drawn.bike.body;
    world.fit({ main: stepped("main", numbering, world.written.main!, 2) });
    pilotByScrew(world);
    const goOut = (): void => {
      report = ride(world, "free");
      follow();
    };
    goOut();
    work(["light", "middle"], 4);
    work(["top"], 6);
    pilotByScrew(world);
    if (mayGoOn(world)) goOut();
    work(["middle", "light", "top", "snap", "idle", "closing"], 6);

    /** Steps a stretch until nobody complains of it; a step that was one too many is taken back. */
    function work(stretches: readonly string[], most: number): void {
      let last: "rich" | "lean" | null = null;
      for (let i = 0; i < most && mayGoOn(world); i++) {
        const list = complaints(report, strokes);
        // A lean top always comes first.
        const worst =
          list.find(({ stretch, feel }) => stretch === "top" && feel === "lean") ??
          list.find(({ stretch }) => stretches.includes(stretch));
        if (worst === undefined) return;
        const change = chartStep(world, worst.stretch, worst.feel === "lean" ? 1 : -1);
        world.fit(change);
        report = tryOut(world, change, null, report);
        follow();
        // Between two that bracket it: the richer stays.
        if (
          last !== null &&
          last !== worst.feel &&
          worst.feel === "lean" &&
          stretches.includes(worst.stretch)
        )
          return;
        last = worst.feel;
      }
    }
  },
};

/** Sweeps the screw; best too near an end asks for the next pilot jet. */
function pilotByScrew(world: World): void {
  const { body } = world.drawn.bike;
  const id = body.screw === "air" ? "screw-sweep-air" : "screw-sweep-fuel";
  for (let i = 0; i < 3; i++) {
    world.spend(testById(id)!.minutes);
    const tried = tryTest(world, id, 0, "stay below 3/4", () => null, []);
    const best = tried?.numbers.bestTurns;
    if (best !== undefined && best >= 1 && best <= 2.5) {
      world.fit({ turns: best });
      return;
    }
    if (tried === null || tried.outcome === "no-difference") return;
    const wantsMore = (tried.outcome === "nearly-closed") === (body.screw === "air");
    world.fit({ pilot: stepped("pilot", body.numbering, world.written.pilot!, wantsMore ? 1 : -1) });
  }
}
