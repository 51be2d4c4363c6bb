import { type Advice, checkById, nextStep, type Step, testById } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { LIFTS, type PartName, type Parts } from "../truth/bike.ts";
import { looksFor } from "../world/looks.ts";
import { onTheStand, ride } from "../world/report-of.ts";
import { tryTest } from "../world/try-test.ts";
import { isClean, type World } from "../world/world.ts";
import type { Notes } from "./notes.ts";
import { mayGoOn, type Policy } from "./policy.ts";
import { partsOf, ToldCase } from "./told-case.ts";

const MOST_STEPS = 45;
const CONTENT = 0.6;
/** A test of so many minutes is made on the spot, on the outing that asked for it. */
const SHORT = 8;

/** The tool itself, followed step by step. */
export const ours = (oneAtATime: boolean): Policy => ({
  name: oneAtATime ? "ours, one at a time" : "ours, sets",
  words: oneAtATime ? "the tool, one part changed at a time" : "the tool, whole sets of parts allowed",
  work: (world, notes) => follow(world, notes, new ToldCase(world, oneAtATime)),
});

function follow(world: World, notes: Notes, told: ToldCase): void {
  told.rode(ride(world, "free"), false);
  let confirmed = 0;
  const failed = new Set<string>();
  for (let steps = 0; steps < MOST_STEPS && mayGoOn(world); steps++) {
    const outcome = nextStep(told.case(), english);
    if (!outcome.ok) {
      notes.steps.push(`refused: ${outcome.detail}`);
      return;
    }
    note(world, notes, outcome.value);
    const { step, others } = outcome.value;
    const todo = [step, ...others].find(
      (each) => each.kind !== "test" || !failed.has(`${each.id}|${each.opening}`),
    );
    if (todo === undefined) return;
    const settled = todo.kind === "ride" && todo.id === "confirm";
    // Content twice, or told three times that no change is worth its minutes: that is the end of it.
    const content = outcome.value.step.sure.chance;
    if (settled && confirmed >= (content >= CONTENT ? 1 : 2)) return;
    confirmed = settled ? confirmed + 1 : 0;
    notes.steps.push(
      `${todo.kind} ${todo.id}${todo.situation ? ` ${todo.changes.map(({ from, to }) => `${from}>${to}`).join(", ")}` : ""}`,
    );
    if (!take(world, told, todo)) failed.add(`${todo.id}|${todo.opening}`);
    if (todo.kind !== "test") failed.clear();
  }
}

/** Does one step; false where the world could not make that test. */
function take(world: World, told: ToldCase, step: Step): boolean {
  switch (step.kind) {
    case "stop":
      technician(world, told);
      return true;
    case "mend": {
      world.mend(step.id);
      const found = [...told.checks]
        .reverse()
        .find(({ fault, found }) => fault === step.id && found === "faulty");
      told.checked(found?.check ?? looksFor(step.id)[0]!, "mended", step.id);
      return true;
    }
    case "look-over": {
      for (const { id, found, fault } of world.lookOver(step.looks!)) told.checked(id, found, fault);
      return true;
    }
    case "check": {
      const { found, fault } = world.check(step.id, checkById(step.id)!.minutes);
      told.checked(step.id, found, fault);
      return true;
    }
    case "test": {
      const test = testById(step.id)!;
      const outcomes = test.outcomes.map(({ id }) => id);
      const signOf = (id: string): string | null =>
        test.outcomes.find((each) => each.id === id)?.sign ?? null;
      const throttle = test.wideOpen ? step.topThrottle : "stay below 3/4";
      if (test.cautions.includes("test-riding")) world.run(throttle, test.minutes, test.minutes > SHORT);
      else world.spend(test.minutes);
      const tried = tryTest(world, step.id, step.opening, throttle, signOf, outcomes);
      if (tried === null) return false;
      told.tested(step.id, step.opening, tried.outcome, tried.numbers);
      return true;
    }
    case "change": {
      const before = { parts: world.parts, seems: world.seems("free") };
      const wanted = partsOf(step.situation!.setup);
      const written = world.written;
      const change: { [name in PartName]?: number } = {};
      for (const name of Object.keys(wanted) as PartName[]) {
        if (wanted[name] === written[name]) continue;
        told.keeps(name, written[name]);
        change[name] = wanted[name]!;
      }
      world.fit(change as Partial<Parts>);
      const screwOnly = Object.keys(change).every((name) => name === "turns");
      told.rode(
        screwOnly ? onTheStand(world, before.seems) : ride(world, step.topThrottle, before.seems),
        true,
      );
      return true;
    }
    case "read-parts": {
      const before = world.written;
      world.readParts();
      told.putRight(before, world.written);
      return true;
    }
    case "ride":
      told.rode(ride(world, step.topThrottle), false);
      return true;
  }
}

/** A licensed technician looks for the cause: finds nine faults in ten. */
function technician(world: World, told: ToldCase): void {
  world.spend(60);
  const broken = world.broken;
  if (broken !== null && world.chance("technician").of(0.9)) {
    const check = looksFor(broken.fault)[0]!;
    told.checked(check, "faulty", broken.fault);
    world.mend(broken.fault);
    told.checked(check, "mended", broken.fault);
  } else told.checked("spark-and-plug", "sound", null);
}

/** Writes down what was said beside what was true. */
function note(world: World, notes: Notes, { picture, suspects, soundChance, step, others }: Advice): void {
  const truth = world.errorOfJets();
  const there = world.broken?.fault ?? null;
  for (const { opening, mean, sd } of picture) {
    const error = truth[LIFTS.indexOf(opening)]!;
    notes.bands.push({ at: opening, z: (error - mean) / sd, sd, error, broken: there !== null });
  }
  for (const { fault, chance } of suspects) notes.faults.push({ chance, there: fault === there, fault });
  notes.sound.push({ chance: soundChance, there: there === null });
  const change = [step, ...others].find(({ kind }) => kind === "change");
  const said =
    step.kind === "test" ||
    step.kind === "read-parts" ||
    (step.kind === "ride" && step.id === "ride") ||
    step.sure.words === "not sure";
  const wrong = change === undefined ? there !== null || !isClean(truth) : !improves(world, change);
  notes.unsure.push({ said, wrong: wrong || there !== null });
}

/** Whether a change would bring the jets nearer to right where it matters, by the truth. */
function improves(world: World, change: Step): boolean {
  const now = off(world.errorOfJets());
  const wanted = partsOf(change.situation!.setup);
  const written = world.written;
  const parts: { -readonly [name in PartName]: number } = { ...world.parts };
  for (const name of Object.keys(wanted) as PartName[])
    if (wanted[name] !== written[name]) parts[name] = wanted[name]!;
  return off(world.errorOfJets(parts)) < now;
}

const off = (error: readonly number[]): number => error.reduce((sum, each) => sum + each * each, 0);
