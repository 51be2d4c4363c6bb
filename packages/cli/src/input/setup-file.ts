import { readFileSync } from "node:fs";
import { accept, type Outcome, refuse } from "@jetwright/core";
import { bikeCase, type JsonObject, LogReader, type ReplayedCase, replay } from "@jetwright/records";
import { fileTrouble } from "./file-trouble.ts";
import { notText } from "./read-log.ts";

/** A setup file: bodies of the records of a log, by what they tell of. */
const FIELDS = {
  bike: "bike-described",
  setup: "setup-fitted",
  air: "air-measured",
  fuel: "fuel-used",
} as const;
type Field = keyof typeof FIELDS;
type SetupFile = Partial<Record<Field, JsonObject>>;

const isObject = (value: unknown): value is JsonObject =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const EXAMPLE =
  '{"bike": {"engine": {"strokes": 2}}, "setup": {"main": {"number": 175}}, "air": {"temperatureC": 18, "heightM": 450}}';

function readFields(path: string): Outcome<SetupFile> {
  let bytes: Buffer;
  try {
    bytes = readFileSync(path);
  } catch (error) {
    return fileTrouble(error, path, "read");
  }
  const garbage = notText(bytes);
  if (garbage !== null) return refuse("not-a-setup", `${path} ${garbage}`);
  let value: unknown;
  try {
    value = JSON.parse(bytes.toString("utf8").replace(/^\ufeff/, ""));
  } catch {
    return refuse("not-a-setup", `${path} is not well-formed JSON. Write it like ${EXAMPLE}.`);
  }
  if (!isObject(value)) return refuse("not-a-setup", `${path} holds no setup. Write it like ${EXAMPLE}.`);
  for (const [name, body] of Object.entries(value)) {
    if (!Object.hasOwn(FIELDS, name)) {
      return refuse(
        "not-a-setup",
        `${path}, ${name}: is not a field of a setup file. They are ${Object.keys(FIELDS).join(", ")}.`,
      );
    }
    if (!isObject(body)) return refuse("not-a-setup", `${path}, ${name}: must be an object in { }.`);
  }
  return accept(value as SetupFile);
}

/** One object laid over another, one level deep, so that a file can say only what differs. */
const over = (under: JsonObject | undefined, upper: JsonObject | undefined): JsonObject | undefined =>
  under === undefined ? upper : { ...under, ...upper };

/** Reads a file with a setup; what it leaves out is as in the file it is laid over, if any. */
export function readSetupFile(path: string, base?: string): Outcome<ReplayedCase> {
  const own = readFields(path);
  if (!own.ok) return own;
  const under = base === undefined ? accept({} as SetupFile) : readFields(base);
  if (!under.ok) return under;
  const fields: SetupFile = {};
  for (const name of Object.keys(FIELDS) as Field[]) {
    const merged =
      name === "air" ? (own.value.air ?? under.value.air) : over(under.value[name], own.value[name]);
    if (merged !== undefined) fields[name] = merged;
  }
  const at = "2000-01-01T00:00:00Z";
  const reader = new LogReader();
  const names = { ...fields, bike: { engine: { strokes: 2 }, ...fields.bike } };
  for (const [name, kind] of Object.entries(FIELDS)) {
    const body = names[name as Field];
    if (body !== undefined) reader.record({ id: name, kind, at, bike: "setup", body });
  }
  const log = reader.end();
  const [problem] = log.problems;
  if (problem !== undefined) {
    const place = problem.path.replace(/^body/, problem.record ?? "setup");
    return refuse("bad-setup", `${path}, ${place}: ${problem.what}. ${problem.mend}`);
  }
  const made = bikeCase(replay(log.entries), "setup");
  if (!made.ok || fields.bike !== undefined) return made;
  return accept({
    ...made.value,
    warnings: [...made.value.warnings, { code: "engine-assumed", record: null }],
  });
}
