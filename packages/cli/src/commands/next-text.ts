import type { Advice, Step } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import type { Look } from "../command.ts";
import type { BikeOfLog } from "../input/bike-of-log.ts";
import { dayOf } from "../print/dates.ts";
import { lastHeard } from "../print/last-heard.ts";
import { labelled, labelledList, wrap } from "../print/layout.ts";
import { inTen, mixtureSentences, twoSidedSentences } from "../print/mixture-words.ts";
import { paintFor } from "../print/paint.ts";
import { mixturePicture } from "../print/picture.ts";
import { points, worthSaying } from "../print/points.ts";
import { oneLine } from "../print/printable.ts";
import { airLine, bikeTitle, fittedLine } from "../print/situation-words.ts";

const OTHERS = 6;

/** The next step as a page: the bike, the mixture in words and drawn, the step, then everything else. */
export function nextText(of: BikeOfLog, advice: Advice, airGiven: boolean, look: Look): string {
  const { width, units } = look;
  const paint = paintFor(look.colour);
  const { story, bike } = of;
  const lines = [
    paint.strong(bikeTitle(story)),
    ...wrap(airLine(story, bike.now.air, units, airGiven), width),
    ...wrap(fittedLine(bike.now.setup), width),
    "",
    ...lastHeard(story).flatMap((sentence) => wrap(sentence, width)),
    ...wrap(mixtureSentences(advice), width),
    ...twoSidedSentences(advice).flatMap((sentence) => wrap(sentence, width)),
    "",
    ...mixturePicture(advice.picture, advice.pictureAfter, { unicode: look.unicode, paint: paint.side }),
    "",
    paint.loud(` NEXT: ${advice.step.title} `.padEnd(look.colour ? width : 0).trimEnd()),
    "",
    ...stepLines(advice.step, of, width),
    "",
    ...othersLines(advice.others, width),
    ...waitingLines(advice, width),
    ...suspectLines(advice, width),
    ...leftOutLines(advice, of, width),
    ...points("Assumed or doubtful", worthSaying(bike.warnings), width),
  ];
  if (!advice.settled) lines.push("", "The reckoning stopped early: take the figures as rough.");
  return lines.join("\n");
}

function stepLines(step: Step, of: BikeOfLog, width: number): string[] {
  const dated = step.why.map(({ record, text }) => {
    const entry = of.story.entries.find(({ id }) => id === record);
    const when = entry === undefined ? "" : `${dayOf(entry)}: `;
    return `${when}${oneLine(text)} (${oneLine(record)})`;
  });
  return [
    ...labelled("Takes", `${Math.round(step.minutes)} minutes${rides(step)}`, width),
    ...labelledList("Do", step.how, width, (i) => `${i + 1}. `),
    ...labelledList("Change", step.changes.map(changeWords), width),
    ...labelledList("Why", dated, width),
    ...optional("Expect", step.expect, width),
    ...optional("Wrong if", step.wrongIf, width),
    ...optional("Undo", step.undo, width),
    ...labelled("Sure?", sureWords(step), width),
    ...labelled("Throttle", throttleWords(step), width),
    ...labelledList(
      "Note",
      step.notes.filter((note) => note !== throttleWords(step)),
      width,
    ),
    ...optional("Tools", step.tools.join(", "), width),
    ...labelledList(
      "Mind",
      step.cautions.map((id) => english.cautions[id]),
      width,
      () => "- ",
    ),
  ];
}

const optional = (label: string, text: string, width: number): string[] =>
  text === "" ? [] : labelled(label, oneLine(text), width);

const rides = ({ kind }: Step): string => (kind === "change" ? ", the ride that proves it included" : "");

const changeWords = ({ from, to, inDrawer, part }: Step["changes"][number]): string => {
  const name = part === "needleJet" ? "needle jet" : part;
  return `${name}: ${oneLine(from)} to ${oneLine(to)}${inDrawer ? "" : " (not in the drawer)"}`;
};

/** How sure the step is, said for its kind. */
export function sureWords({ kind, sure }: Step): string {
  switch (kind) {
    case "change":
      return `${upperFirst(sure.words)} the right way (${inTen(sure.chance)}).`;
    case "check":
      return sure.chance >= 0.5
        ? `It is ${sure.words} this (${inTen(sure.chance)}).`
        : `It is this ${about(sure.chance)}; looking costs little.`;
    case "look-over":
      return `It finds something ${about(sure.chance)}; looking costs little.`;
    case "test":
      return "The test itself will tell.";
    case "ride":
      return sure.chance < 0.6
        ? "Not known yet whether anything needs changing."
        : `${upperFirst(sure.words)} that nothing needs changing (${inTen(sure.chance)}).`;
    case "stop":
    case "mend":
    case "read-parts":
      return `${upperFirst(sure.words)}.`;
  }
}

const about = (chance: number): string => (chance < 0.05 ? "hardly ever" : `about ${inTen(chance)}`);
const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** How far the throttle may be opened until this step is done. */
function throttleWords({ topThrottle, kind }: Step): string {
  if (kind === "stop") return "Do not ride it.";
  switch (topThrottle) {
    case "free":
      return "All of it may be used.";
    case "seconds only":
      return "The top is not proved yet: a few seconds at 3/4 or more, no longer, and off the throttle at the first ping.";
    case "stay below 3/4":
      return "The top may be lean: stay below 3/4 throttle.";
  }
}

function othersLines(others: readonly Step[], width: number): string[] {
  const lines = others.slice(0, OTHERS).map((step) => `${step.title}, ${Math.round(step.minutes)} minutes`);
  return points("Other ways, best first", lines, width);
}

function waitingLines({ waiting }: Advice, width: number): string[] {
  const lines = waiting.map(({ title, why, frees }) => `${title}. ${why} ${frees}`);
  return points("Would help, but has to wait", lines, width);
}

function suspectLines({ suspects, soundChance }: Advice, width: number): string[] {
  if (suspects.length === 0) return [];
  const none = `none of them: ${about(soundChance)}`;
  return points(
    "Suspects besides the jets",
    [...suspects.map(({ words, chance }) => `${words}: ${about(chance)}`), none],
    width,
  );
}

function leftOutLines({ leftOut }: Advice, of: BikeOfLog, width: number): string[] {
  const lines = leftOut.map(({ record, why }) => {
    const entry = of.story.entries.find(({ id }) => id === record);
    return `${entry === undefined ? "" : `${dayOf(entry)}, `}${oneLine(record)}: ${oneLine(why)}`;
  });
  return points("Left out of the reckoning", [...new Set(lines)], width);
}
