import type * as z from "zod/mini";
import { closestWords } from "./closest-words.ts";
import { isJsonObject } from "./json.ts";
import { type Flaw, flaw, joinPath } from "./problem.ts";
import type { Limit, Seen, Way } from "./words/flaw-told.ts";

type Issue = z.core.$ZodIssue;

/** A value as a person would point at it. */
function seen(value: unknown): Seen {
  if (value === undefined) return "nothing";
  if (Array.isArray(value)) return "list";
  if (isJsonObject(value)) return "object";
  const text = JSON.stringify(value) ?? String(value);
  return { text: text.length > 40 ? `${text.slice(0, 37)}...` : text };
}

function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let value = root;
  for (const key of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, key)) return undefined;
    value = (value as Record<PropertyKey, unknown>)[key];
  }
  return value;
}

/** What was meant by a value of the wrong type, where the slip is a usual one. */
function meant(expected: string, value: unknown): string | null {
  if ((expected === "number" || expected === "int") && typeof value === "string") {
    const number = Number(value.trim().replace(",", "."));
    return value.trim() !== "" && Number.isFinite(number) ? String(number) : null;
  }
  if (expected === "boolean" && typeof value === "string" && /^(true|false)$/i.test(value)) {
    return value.toLowerCase();
  }
  return expected === "string" && typeof value === "number" ? String(value) : null;
}

function limitOf(issue: Issue & { code: "too_small" | "too_big" }): Limit {
  const small = issue.code === "too_small";
  const edge =
    issue.inclusive === false ? (small ? "more than" : "less than") : small ? "at least" : "at most";
  const of = issue.origin === "string" ? "letters" : issue.origin === "array" ? "entries" : "value";
  return { of, edge, limit: String(small ? issue.minimum : issue.maximum) };
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

const inQuotes = (words: readonly unknown[]): string[] => words.map((word) => JSON.stringify(word));

function flawOf(issue: Issue, at: string, value: unknown): Flaw {
  switch (issue.code) {
    case "invalid_type": {
      const type = issue.expected;
      if (value === undefined) return flaw(at, "missing", { type });
      return flaw(at, "wrong-type", { type, seen: seen(value), meant: meant(type, value) });
    }
    case "invalid_value": {
      const words = inQuotes(issue.values);
      if (value === undefined) return flaw(at, "missing-word", { words });
      const near = typeof value === "string" ? closestWords(value, issue.values.map(String)) : [];
      return flaw(at, "wrong-word", { words, near, seen: seen(value) });
    }
    case "too_small":
    case "too_big":
      return flaw(at, "out-of-limit", { limit: limitOf(issue), seen: seen(value) });
    case "invalid_format":
      return flaw(at, "wrong-form", { seen: seen(value), hash: issue.pattern?.includes("a-f") === true });
    default:
      return flaw(at, "not-to-be-used", { message: issue.message });
  }
}

/** The issues of a schema, said to a person, each with its path in the record. */
export function zodFlaws(issues: readonly Issue[], root: unknown, base: string): Flaw[] {
  return issues.flatMap((issue) => {
    const value = valueAt(root, issue.path);
    const at = joinPath(base, issue.path);
    if (issue.code !== "invalid_union") return [flawOf(issue, at, value)];
    const branches = issue.errors.filter((branch) => branch.length > 0);
    const wrong = branches.length === 0 ? null : likeliest(branches, value);
    if (wrong !== null && !wrong.some((one) => one.path.length === 0)) return zodFlaws(wrong, value, at);
    const ways = wrong === null ? optionsOf(issue) : branches.flatMap(waysOf);
    return [flaw(at, "none-of-these", { seen: value === undefined ? null : seen(value), ways })];
  });
}

/** The words that tell the branches of a union apart. */
const optionsOf = (issue: Issue): Way[] =>
  "options" in issue && Array.isArray(issue.options)
    ? inQuotes(issue.options).map((word) => ({ words: [word] }))
    : [];

/** What one branch of a union would have taken in place of the value. */
function waysOf(branch: readonly Issue[]): Way[] {
  return branch
    .filter((one) => one.path.length === 0)
    .map((one) => {
      if (one.code === "invalid_type") return { type: one.expected };
      if (one.code === "invalid_value") return { words: inQuotes(one.values) };
      return { limit: limitOf(one as Parameters<typeof limitOf>[0]) };
    });
}
