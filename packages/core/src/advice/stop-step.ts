import { signById } from "../belief/signs/all.ts";
import type { KnownSign } from "../belief/signs/row.ts";
import type { CautionId, CoreWords } from "../words/core-words.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { since } from "./complaint.ts";
import { situationKey } from "./situation-key.ts";
import { testById } from "./tests-on-engine.ts";
import type { Weighing } from "./weighing.ts";

/** The cautions that go with an engine that warned. */
const CAUTIONS: readonly CautionId[] = ["stop-at-knock", "runaway", "hand-over", "makers-manual"];

/** Pinging is a warning: it can end in detonation and a holed piston. Common practice, no source. Rule A6. */
const KNOCK_WARNINGS: readonly string[] = ["pings-on-roll-on"];

interface SeenSign {
  readonly record: string;
  readonly at: number;
  readonly sign: KnownSign;
}

/** Every sign noticed, on a ride or as the outcome of a test. */
export function seenSigns(story: BikeCase): readonly SeenSign[] {
  const named = [
    ...story.rides.flatMap(({ record, at, reports }) =>
      reports.filter(({ seen }) => seen).map(({ sign }) => ({ record, at, name: sign })),
    ),
    ...story.tests.map(({ record, at, test, outcome }) => ({
      record,
      at,
      name: testById(test)?.outcomes.find(({ id }) => id === outcome)?.sign ?? "",
    })),
  ];
  return named.flatMap(({ record, at, name }) => {
    const sign = signById(name);
    return sign === undefined ? [] : [{ record, at, sign }];
  });
}

/** The oldest first, whatever the order they were told in. */
function inOrder(a: SeenSign, b: SeenSign): number {
  if (a.at !== b.at) return a.at - b.at;
  if (a.record !== b.record) return a.record < b.record ? -1 : 1;
  return a.sign.id < b.sign.id ? -1 : 1;
}

/** When it last pinged on the parts and air of now, since the last mend; -Infinity: never. */
export function lastWarning(story: BikeCase): number {
  const here = situationKey(story.now);
  const places = new Map(
    [...story.rides, ...story.tests].map(({ record, situation }) => [record, situation]),
  );
  const from = since(story);
  return seenSigns(story)
    .filter(
      ({ record, at, sign }) =>
        at > from && KNOCK_WARNINGS.includes(sign.id) && situationKey(places.get(record)!) === here,
    )
    .reduce((last, { at }) => Math.max(last, at), -Infinity);
}

/** True while pinging was the last word on the parts and air of now: no riding under load to learn more, nothing leaner. */
export const warnedOfKnock = (story: BikeCase): boolean => lastWarning(story) > -Infinity;

/** What to mind on the next ride after pinging; none without it. */
export const knockNotes = (story: BikeCase, { steps }: CoreWords): readonly string[] =>
  warnedOfKnock(story) ? [steps.afterKnock] : [];

/**
 * A stop sign that nobody has answered: seen on a ride or in a test, and no check since then that found or
 * mended something, or found all sound. It ends tuning. Rule A6.
 */
export function stopStep({ story, words }: Weighing): Step | null {
  const seen = seenSigns(story).filter(({ sign }) => sign.stop);
  const answered = Math.max(story.freshStartAt ?? -Infinity, ...story.checks.map(({ at }) => at));
  const open = seen.filter(({ at }) => at > answered).sort(inOrder);
  const [first] = open;
  if (first === undefined) return null;
  const { title, how, tools, expect, wrongIf, undo, note } = words.steps.stop;
  return {
    kind: "stop",
    id: "stop",
    title,
    how,
    tools,
    why: open.map(({ record, sign }) => ({ record, text: words.signs[sign.id].words })),
    expect,
    wrongIf,
    undo,
    sure: surenessOf(1),
    minutes: 30,
    worth: Infinity,
    cautions: CAUTIONS,
    changes: [],
    situation: null,
    opening: null,
    topThrottle: "stay below 3/4",
    notes: [note],
  };
}
