import type * as z from "zod/mini";
import { didYouMean } from "./closest-words.ts";
import { isJsonObject } from "./json.ts";
import { type Flaw, flaw, joinPath } from "./problem.ts";

type Issue = z.core.$ZodIssue;

const NAMES: Readonly<Record<string, string>> = {
  number: "a number",
  int: "a whole number",
  string: "text in quotes",
  boolean: "true or false",
  array: "a list in [ ]",
  object: "an object in { }",
  record: "an object in { }",
};
const nameOf = (type: string): string => NAMES[type] ?? type;

/** A value as a person would point at it. */
function shown(value: unknown): string {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return "a list";
  if (isJsonObject(value)) return "an object";
  const text = JSON.stringify(value) ?? String(value);
  return text.length > 40 ? `${text.slice(0, 37)}...` : text;
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** How to mend a value of the wrong type, where the slip is a usual one. */
function mendType(expected: string, value: unknown): string {
  if (value === undefined) return `Add it: ${nameOf(expected)}.`;
  if ((expected === "number" || expected === "int") && typeof value === "string") {
    const number = Number(value.trim().replace(",", "."));
    if (value.trim() !== "" && Number.isFinite(number)) {
      return `Write ${number} without quotes, with a point for decimals.`;
    }
  }
  if (expected === "boolean" && typeof value === "string" && /^(true|false)$/i.test(value)) {
    return `Write ${value.toLowerCase()} without quotes.`;
  }
  if (expected === "string" && typeof value === "number") return `Put quotes around it: "${value}".`;
  return `Write ${nameOf(expected)} there, or take the field out.`;
}

function limitText(issue: Issue & { code: "too_small" | "too_big" }): [string, string] {
  const small = issue.code === "too_small";
  const limit = String(small ? issue.minimum : issue.maximum);
  const edge = `${issue.inclusive === false ? (small ? "more than" : "less than") : small ? "at least" : "at most"} ${limit}`;
  if (issue.origin === "string")
    return [`must have ${edge} letters`, small ? "Write it out." : "Shorten it."];
  if (issue.origin === "array") {
    return [`must have ${edge} entries`, small ? "Add an entry." : "Split it over more records."];
  }
  return [`must be ${edge}`, "Check the value and its unit: the field's name says which unit it is in."];
}

/**
 * The branch of a union that the value was most likely meant for: of its type, then with the fewest fields
 * missing, then gone wrong deepest, then least.
 */
function likeliest(branches: readonly (readonly Issue[])[], value: unknown): readonly Issue[] {
  const missing = (issues: readonly Issue[]): number =>
    issues.filter((one) => one.path.length > 0 && valueAt(value, one.path) === undefined).length;
  const depth = (issues: readonly Issue[]): number => Math.max(0, ...issues.map((one) => one.path.length));
  const wrongType = (issues: readonly Issue[]): number =>
    issues.some(
      (one) => one.path.length === 0 && (one.code === "invalid_type" || one.code === "invalid_value"),
    )
      ? 1
      : 0;
  return [...branches].sort(
    (a, b) =>
      wrongType(a) - wrongType(b) || missing(a) - missing(b) || depth(b) - depth(a) || a.length - b.length,
  )[0]!;
}

function explain(issue: Issue, value: unknown): [string, string] {
  switch (issue.code) {
    case "invalid_type":
      return [
        value === undefined ? "is missing" : `must be ${nameOf(issue.expected)}, but is ${shown(value)}`,
        mendType(issue.expected, value),
      ];
    case "invalid_value": {
      const words = issue.values.map(String);
      const list = issue.values.map((word) => JSON.stringify(word)).join(", ");
      if (value === undefined) return ["is missing", `Add it: one of ${list}.`];
      const near = typeof value === "string" ? didYouMean(value, words, "") : "";
      return [`must be one of ${list}, but is ${shown(value)}`, near || "Write one of these words."];
    }
    case "too_small":
    case "too_big": {
      const [what, mend] = limitText(issue);
      return [`${what}, but is ${shown(value)}`, mend];
    }
    case "invalid_format":
      return [
        `is ${shown(value)}, which is not in the right form`,
        issue.pattern?.includes("a-f")
          ? "Write the 64 hex digits of the file's SHA-256, in small letters."
          : "Use 1 to 64 letters, digits and . _ : - for it.",
      ];
    default:
      return [`cannot be used: ${issue.message}`, "See the field in the manual."];
  }
}

/** The issues of a schema, said to a person, each with its path in the record. */
export function zodFlaws(issues: readonly Issue[], root: unknown, base: string): Flaw[] {
  return issues.flatMap((issue) => {
    const value = valueAt(root, issue.path);
    const at = joinPath(base, issue.path);
    if (issue.code === "invalid_union") {
      const branches = issue.errors.filter((branch) => branch.length > 0);
      const wrong = branches.length === 0 ? null : likeliest(branches, value);
      if (wrong !== null && !wrong.some((one) => one.path.length === 0)) return zodFlaws(wrong, value, at);
      const ways = wrong === null ? optionsOf(issue) : branches.flatMap(waysOf);
      const mend = `Write ${[...new Set(ways)].join(", or ")}.`;
      return [flaw(at, value === undefined ? "is missing" : `${shown(value)} cannot be read here`, mend)];
    }
    const [what, mend] = explain(issue, value);
    return [flaw(at, what, mend)];
  });
}

/** The words that tell the branches of a union apart. */
const optionsOf = (issue: Issue): string[] =>
  "options" in issue && Array.isArray(issue.options) ? issue.options.map((word) => JSON.stringify(word)) : [];

/** What one branch of a union would have taken in place of the value. */
function waysOf(branch: readonly Issue[]): string[] {
  return branch
    .filter((one) => one.path.length === 0)
    .map((one) => {
      if (one.code === "invalid_type") return nameOf(one.expected);
      if (one.code === "invalid_value") return one.values.map((word) => JSON.stringify(word)).join(", ");
      return limitText(one as Parameters<typeof limitText>[0])[0].replace("must be", "a value");
    });
}
