import type { FlawWords, Limit, Seen, Way } from "../flaw-told.ts";

const ID_FORM = "Use 1 to 64 letters, digits and . _ : - for it.";
const NEWER = "Nothing needs doing if it comes from a newer version";
const TYPES: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "text in quotes",
  boolean: "true or false",
  array: "a list in [ ]",
  object: "an object in { }",
  record: "an object in { }",
};
const SEEN = { nothing: "nothing", list: "a list", object: "an object" } as const;
const UNITS = { value: "", letters: " letters", entries: " entries" } as const;

const typed = (type: string): string => TYPES[type] ?? type;
const shown = (seen: Seen): string => (typeof seen === "string" ? SEEN[seen] : seen.text);
const limited = ({ of, edge, limit }: Limit): string => `${edge} ${limit}${UNITS[of]}`;
const must = (limit: Limit): string => `must ${limit.of === "value" ? "be" : "have"} ${limited(limit)}`;
const either = (words: readonly string[]): string => words.map((word) => `"${word}"`).join(" or ");
const meant = (near: readonly string[], otherwise: string): string =>
  near.length === 0 ? otherwise : `Did you mean ${either(near)}?`;
const whole = (way: Way): string => {
  if ("type" in way) return typed(way.type);
  if ("words" in way) return way.words.join(", ");
  return way.limit.of === "value" ? `a value ${limited(way.limit)}` : must(way.limit);
};
const mended = ({ of, edge }: Limit): string => {
  if (of === "value") return "Check the value and its unit: the field's name says which unit it is in.";
  const long = edge === "at most" || edge === "less than";
  if (of === "letters") return long ? "Shorten it." : "Write it out.";
  return long ? "Split it over more records." : "Add an entry.";
};

/** What is wrong with a record and how to mend it, in English. */
export const flaws: FlawWords = {
  "line-too-long": ({ limit }) => [
    `the line is longer than ${limit} characters and was not read`,
    "A record is a few hundred: keep pictures and sound outside the log and record their hash.",
  ],
  "too-deep": ({ limit }) => [
    `is nested deeper than ${limit} levels`,
    "No record needs that: write it flatter.",
  ],
  "number-too-large": () => ["is a number too large for any computer", "Check the digits and the exponent."],
  "half-character": () => ["holds half of a character, from a text that was cut", "Type the text again."],
  "no-record": ({ shown: line }) =>
    line === null
      ? [
          "is not a record",
          'Write it like {"id": "r1", "kind": "note", "at": "2026-05-02T10:15:00Z", "body": {"text": "..."}}.',
        ]
      : [`is not a record: ${line}`, "A line is one record: it starts with { and ends with }."],
  "half-written": ({ end }) => [
    `is only half written: ...${end}`,
    "It ends before its closing }: the writing was cut off. Write that record again.",
  ],
  "not-json": ({ shown: line }) => [
    `is not well-formed JSON: ${line}`,
    "Look for a missing comma, colon or quote, a comma too many, or curly quotes in place of plain ones.",
  ],

  id: ({ missing }) => [missing ? "is missing" : "is not a usable name for a record", ID_FORM],
  kind: ({ missing }) => [
    missing ? "is missing" : "is not a word",
    'Write the kind of record, such as "ride-reported".',
  ],
  version: () => ["is not a version", "Write a whole number from 1, or leave it out for version 1."],
  time: ({ missing, detail }) => [missing ? "is missing" : "is not a date and time with zone", detail],
  "written-by": () => ["is not who wrote it", 'Write it like "by": {"person": "Jo"}, or leave it out.'],
  "extra-field": ({ near, outside }) => [
    "is not a field we know; it is kept but not used",
    outside ? "Fields of a kind belong in its body." : meant(near, `${NEWER}.`),
  ],
  "unknown-kind": ({ word, near }) => [
    `"${word}" is not a kind we know; the record is kept but not used`,
    meant(near, `${NEWER} of the tool.`),
  ],
  "newer-version": ({ version, kind, known }) => [
    `is version ${version} of ${kind}, and this tool reads up to version ${known}; it is kept but not used`,
    "Update the tool to use it.",
  ],
  bike: ({ missing }) =>
    missing
      ? ["is missing", 'Say which bike it is about, such as "bike": "bramble".']
      : ["is not a usable name for a bike", ID_FORM],
  "bike-needless": ({ kind }) => [`a ${kind} record is about the whole shop`, "Leave the bike out."],
  body: ({ missing }) => [missing ? "is missing" : "must be an object in { }", "Write what happened in it."],
  "old-body": ({ version, kind }) => [
    `cannot be read as version ${version} of ${kind}`,
    "Strike this record and write it again.",
  ],
  "same-id": ({ id, keptLine }) => [
    `two different records have the id "${id}"${keptLine === null ? "" : `; the one in line ${keptLine} is kept`}`,
    "Give the other one an id of its own; to correct a record, strike it and write a new one.",
  ],
  "id-here-already": ({ id }) => [
    `another record has the id "${id}"; the one that was there first is kept`,
    "Give this one an id of its own and take the file in again.",
  ],
  more: ({ count, of }) => [`and ${count} more ${of}`, "Mend these first."],

  missing: ({ type }) => ["is missing", `Add it: ${typed(type)}.`],
  "missing-word": ({ words }) => ["is missing", `Add it: one of ${words.join(", ")}.`],
  "wrong-type": ({ type, seen, meant: value }) => {
    const what = `must be ${typed(type)}, but is ${shown(seen)}`;
    if (value === null) return [what, `Write ${typed(type)} there, or take the field out.`];
    if (type === "string") return [what, `Put quotes around it: "${value}".`];
    const point = type === "boolean" ? "" : ", with a point for decimals";
    return [what, `Write ${value} without quotes${point}.`];
  },
  "wrong-word": ({ words, seen, near }) => [
    `must be one of ${words.join(", ")}, but is ${shown(seen)}`,
    meant(near, "Write one of these words."),
  ],
  "out-of-limit": ({ limit, seen }) => [`${must(limit)}, but is ${shown(seen)}`, mended(limit)],
  "wrong-form": ({ seen, hash }) => [
    `is ${shown(seen)}, which is not in the right form`,
    hash ? "Write the 64 hex digits of the file's SHA-256, in small letters." : ID_FORM,
  ],
  "not-to-be-used": ({ message }) => [`cannot be used: ${message}`, "See the field in the manual."],
  "none-of-these": ({ seen, ways }) => [
    seen === null ? "is missing" : `${shown(seen)} cannot be read here`,
    `Write ${[...new Set(ways.map(whole))].join(", or ")}.`,
  ],

  "no-air": () => [
    "it says nothing about the air",
    "Give temperatureC with stationPressureHpa, or with heightM; or a weather report with heightM.",
  ],
  "weather-report": ({ detail }) => ["cannot be read as a weather report", detail],
  oil: ({ detail }) => ["the oil cannot be understood", detail],
  "no-mixture": () => [
    "the reading has no errorPercent and no pair of lambda and wantedLambda, so it is left out",
    'Give "errorPercent": 4 for 4 % rich, or "lambda": 0.84, "wantedLambda": 0.88.',
  ],
  sign: ({ word, near }) => [
    `"${word}" is not a sign we know, so this one report is left out`,
    meant(near, "List the signs to find its name."),
  ],
  test: ({ word, near }) => [
    `"${word}" is not a test we know`,
    meant(near, "List the tests to find its name."),
  ],
  outcome: ({ word, test, outcomes }) => [
    `"${word}" is not an outcome of ${test}`,
    `Its outcomes are ${outcomes.join(", ")}.`,
  ],
  check: ({ word, near }) => [
    `"${word}" is not a check we know`,
    meant(near, "List the checks to find its name."),
  ],
  fault: ({ word, near, faults }) => [
    `"${word}" is not a fault we know`,
    meant(near, `The faults are ${faults.join(", ")}.`),
  ],
  "no-part": ({ parts }) => [
    "no part is named",
    `Name at least one of ${parts.join(", ")}, or write a record of kind "note".`,
  ],
  "found-and-taken": () => [
    "says what left the drawer, but with asFound nothing was changed, so this is left out",
    "Strike it and write it again without asFound if the parts were changed.",
  ],
  "no-work": () => ["it says nothing", "Give minutes, parts or words."],
};
